export interface TableRow {
  readonly group: string;
  readonly what: string;
  readonly published: number;
  readonly ours: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly within: boolean;
  readonly reason?: string;
  readonly source: string;
}
export function validationTable(given: readonly TableRow[]): string;
