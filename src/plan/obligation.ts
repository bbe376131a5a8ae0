/** What obliges to a cut, in the order in which it is seen to. */
export type Obligation = 'dead' | 'broken' | 'rubbing' | 'clearance' | 'temporary'

/** What holds a cut that waits: the allowance, the crown ratio, a limb too large or too short to be cut, one to be inspected, or one that is permanent. */
export type Hold = 'allowance' | 'crown ratio' | 'size' | 'inspect first' | 'permanent'
