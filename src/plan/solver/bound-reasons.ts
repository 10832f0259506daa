/** Why a bound was tightened; the kind stands first in the trail's four figures of a reason. */
export const GIVEN = 0;
export const BY_LAG = 1;
export const BY_CLAUSE = 2;
export const BY_LIST = 3;
