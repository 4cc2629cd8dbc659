/** Version of the program, said in every plan; the same as in package.json (a test compares them). */
export const HARDSTAND_VERSION = "0.1.0";
