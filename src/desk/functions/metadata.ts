export interface Parameter {
  name: string;
  description: string;
  optional?: boolean;
  dimensionality?: string;
}

export interface FunctionMetadata {
  id: string;
  name: string;
  description: string;
  parameters: Parameter[];
}

/** What Excel is told of the functions too: the same functions.json. */
export async function functionsMetadata(): Promise<FunctionMetadata[]> {
  const answer = await fetch("functions.json");
  if (!answer.ok) throw new Error(`functions.json must load, got status ${answer.status}`);
  return (await answer.json()).functions;
}
