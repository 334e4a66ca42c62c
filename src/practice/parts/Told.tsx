/** What was tried so far, line by line. */

/** Its title and the lines; nothing before the first. */
export function Told({
  title,
  lines,
}: {
  readonly title: string;
  readonly lines: readonly string[];
}) {
  if (lines.length === 0) return null;
  return (
    <div>
      <p class="label">{title}</p>
      <ol class="bench-heard">
        {lines.map((line, at) => (
          <li key={at}>{line}</li>
        ))}
      </ol>
    </div>
  );
}
