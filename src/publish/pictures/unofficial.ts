// Floor 9. What every picture and file of a redesign says of itself.

export const unofficial = "Unofficial study: a proposal for discussion, not a flag in use.";
