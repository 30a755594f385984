// What the tests use of sql.js, which has no types of its own.
declare module "sql.js" {
  export interface Database {
    run(sql: string, values?: readonly (string | number | null)[]): void;
    exec(sql: string): { columns: string[]; values: (string | number | null)[][] }[];
  }
  export default function initSqlJs(): Promise<{ readonly Database: new () => Database }>;
}
