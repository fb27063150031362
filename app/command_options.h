// What the commands with many options share.
#pragma once

#include "core/problem.h"

#include <QCommandLineOption>
#include <QString>
#include <string>

namespace holdband::app {

inline QCommandLineOption valueOption(const char* name, const char* what, const char* value)
{
    return {QString::fromLatin1(name), QString::fromUtf8(what), QString::fromLatin1(value)};
}

inline Problem wrongValue(const char* option, const std::string& value, const std::string& choices)
{
    return {ProblemKind::call,
            "--" + std::string(option) + " can't be \"" + value + "\": it is one of " + choices,
            {},
            {}};
}

} // namespace holdband::app
