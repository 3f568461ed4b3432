import { loadCellFunctions } from "../functions.js";

loadCellFunctions();
