/// <reference types="astro/client" />
declare namespace App {
  interface Locals {
    lesson: import('./components/lesson/context.ts').LessonContext;
  }
}

/** A component, for code that only hands it on. */
declare module '*.astro' {
  const component: import('astro/runtime/server/index.js').AstroComponentFactory;
  export default component;
}
