// What a checker of accessibility (axe-core) finds.

import AxeBuilder from '@axe-core/playwright';

/** What is wrong on the page, or only in the parts that are named. */
export async function violations(page, ...parts) {
  const builder = new AxeBuilder({ page }).options({ rules: { 'target-size': { enabled: true } } });
  for (const part of parts) builder.include(part);
  const { violations: found } = await builder.analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ target, any }) => `${target} ${any[0]?.message ?? ''}`).join('; ')}`);
}
