// The types of a plan, made of the schema of its file: `plan.d.ts` of the JavaScript module.

/** The text of a file of types for `schema`, whose whole is called `Plan`. */
export function planTypes(schema) {
  const parts = Object.entries(schema.$defs).map(([name, part]) => declared(typeName(name), part));
  const { $defs, ...whole } = schema;
  return ['// Made of plan.schema.json at build.', declared('Plan', whole), ...parts, ''].join('\n\n');
}

function declared(name, schema) {
  const description = schema.description ?? schema.title;
  const said = description ? `/** ${description.replaceAll('*/', '* /')} */\n` : '';
  return `${said}export type ${name} = ${typeOf(schema)};`;
}

function typeName(name) {
  return name.split('_').map((word) => word[0].toUpperCase() + word.slice(1)).join('');
}

function typeOf(schema) {
  if (schema.$ref) return typeName(schema.$ref.replace('#/$defs/', ''));
  if ('const' in schema) return JSON.stringify(schema.const);
  const choices = schema.oneOf ?? schema.anyOf;
  if (choices) return choices.map(typeOf).join(' | ');
  switch (schema.type) {
    case 'object': return object(schema);
    case 'array': return `(${typeOf(schema.items)})[]`;
    case 'integer': return 'number';
    case 'number': case 'string': case 'boolean': case 'null': return schema.type;
    default: throw new Error(`No type is known for ${JSON.stringify(schema)}.`);
  }
}

function object({ properties, required = [] }) {
  const fields = Object.entries(properties).map(([name, field]) => {
    const said = field.description ? `/** ${field.description} */ ` : '';
    return `  ${said}${name}${required.includes(name) ? '' : '?'}: ${typeOf(field)};`;
  });
  return `{\n${fields.join('\n')}\n}`;
}
