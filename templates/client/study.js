// A study's page: one box for both flags, and a word where a link speaks of an older state.
