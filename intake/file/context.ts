/** What the file does not say about its pulls. */
export interface FileContext {
  readonly jobId: string;
  /** Joint of rows that name none. */
  readonly jointRef?: string | undefined;
  /** What a row may call a joint (label or reference) and which joint of the job that is; left out: references only. */
  readonly joints?: ReadonlyMap<string, string> | undefined;
  /** Serial number of a wrench and its identity. */
  readonly wrenches?: ReadonlyMap<string, string> | undefined;
  /** Time of rows that have none: when the file is read, UTC with three decimals. */
  readonly readAt: string;
  readonly fileName?: string | undefined;
}
