/** The namespace of our cell functions: `=LUG.NEAREST_STD(52000, "E12")`. It never changes, for it stands in users' files. */
export const NAMESPACE = "LUG";
