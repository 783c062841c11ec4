export function translate(shelf?: string): Promise<string | undefined>;
