// Reads a CSV log: file in, readings out, nothing stored or written. May run on any thread. One
// pass, in pieces of 1 MiB; the file's full text is never in memory.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"

namespace holdband {

/// All or nothing: on a Problem there is no partial result. Single rows and values that can't be
/// used are no Problem: they are in LogFile::rejected, each with its line and reason. Problem
/// (file): the file can't be read. Problem (data), with line and column where there are any: no
/// header or time column, a wanted column missing or doubled, date order or decimal sign open or
/// mixed, a doubled hour that the order of the rows doesn't settle, a unit that the values
/// contradict, text that is no CSV, the hook requested a stop.
Result<LogFile> readLog(const LogRequest& request, const ReadHook& hook = {});

} // namespace holdband
