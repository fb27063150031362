-- Schema step 6: an entry of the history holds what was done as a verb and its arguments, and words
-- are made when it is shown.

-- `verb`: a code such as round.typed, see core/store/history_entry.cpp. It held an English sentence
-- before, which the program turns into a verb and arguments when it takes this step.
-- `arguments`: names and counts, a JSON list of texts.
ALTER TABLE acts RENAME COLUMN what TO verb;
ALTER TABLE acts ADD COLUMN arguments TEXT NOT NULL DEFAULT '[]';
