/** The task list that the examples about the major-portion sheet stand on. */
export const exampleTaskList = {
  file: "tasks.csv",
  text: `section,task_number,task,mfr_tenths
Empennage,E1,Make the tail ribs,4
Empennage,E2,Rivet the tail ribs,
`,
} as const;

/** How `portion.yaml` names that list. */
export const exampleListHead = `list:
  title: List in the crate
  aircraft: fixed wing, all metal
  from: typed from the paper list
  loaded: 2026-03-14
`;
