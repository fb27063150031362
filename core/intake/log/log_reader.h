// Reads a CSV log: file in, readings out, nothing kept or written. May run on any thread. One
// pass, in pieces of 1 MiB; the file's text is never held.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"

namespace holdband {

/// All or nothing: a Problem leaves nothing behind. Single rows and values that can't be used are
/// no Problem: they come in LogFile::rejected, each with its line and reason.
/// Problem (file): the file can't be read. Problem (data), with line and column where there are
/// any: no header or time column, a wanted column missing or doubled, date order or decimal sign
/// open or mixed, a doubled hour that the rows don't settle, a unit that the values contradict,
/// text that is no CSV, the hook said stop.
Result<LogFile> readLog(const LogRequest& request, const ReadHook& hook = {});

} // namespace holdband
