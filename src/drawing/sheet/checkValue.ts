export { checkValue } from '../../site/checkValue.ts';
