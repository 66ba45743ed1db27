import type { Course } from './course.ts';

/** What tells a course from every other of its site: its line and the vertex that it starts at. */
export const courseKey = ({ chain, from }: Pick<Course, 'chain' | 'from'>): string =>
  `${chain.id}:${from.vertex}`;
