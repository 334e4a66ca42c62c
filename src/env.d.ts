/// <reference types="astro/client" />
declare namespace App {
  interface Locals {
    lesson: import('./components/lesson/context.ts').LessonContext;
  }
}
