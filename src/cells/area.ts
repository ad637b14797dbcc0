/** A rectangle of cells: the sheet's name as shown on its tab and an A1 address without `$` and without the sheet. */
export interface Area {
  sheet: string;
  address: string;
}
