import type { Inches } from '../../units/inches.ts';

/**
 * The share of fabric that is wire, seen square on, 0 to 1: 1 − (M ÷ (M + d))², where M is the clear
 * distance between parallel wires and d their diameter, inches. Derived from what ASTM A392 calls mesh.
 */
export const meshSolidity = (mesh: Inches, wire: Inches): number => 1 - (mesh / (mesh + wire)) ** 2;
