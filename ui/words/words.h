// Between the core's text (UTF-8) and the window's (QString), and the person's decimal sign.
#pragma once

#include "core/problem.h"

#include <QString>
#include <optional>
#include <string>
#include <string_view>

namespace holdband::ui {

inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline std::string core(const QString& text)
{
    return text.toStdString();
}

/// ',' or '.', as the person's locale writes numbers.
char decimalSign();

/// With the person's decimal sign; never "-0.0".
QString numberText(double value, int decimals);

/// With its sign always: "+0.9", "−0.4", "0.0".
QString signedText(double value, int decimals);

/// The number where there is one, else a dash.
QString numberOrDash(const std::optional<double>& value, int decimals);

/// The Problem as a sentence that begins with a capital letter.
QString sentence(const Problem& problem);

/// The first letter as a capital.
QString capitalised(QString text);

/// With spaces that do not break a line between a number and its unit: "13 h 49 min".
QString keptTogether(QString text);

inline const QString dash = QStringLiteral("–");

} // namespace holdband::ui
