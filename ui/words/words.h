// The window's texts in the user's language; conversion between the core's text (UTF-8) and the
// window's (QString); and the user's decimal sign.
#pragma once

#include "core/problem.h"

#include <QCoreApplication>
#include <QString>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace holdband::ui {

/// The window's texts. The English text is written in the code and is the key of the catalogue
/// (resources/translations); one text is one full label or sentence. Never call it before the
/// program has chosen its language: no constants at namespace scope.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)

public:
    /// With the plural forms of the language; %n is the count. In English `one` for 1, else `many`.
    static QString counted(const char* many, const char* one, std::uint64_t count);
};

inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline std::string core(const QString& text)
{
    return text.toStdString();
}

/// ',' or '.', as in the user's locale.
char decimalSign();

/// With the user's decimal sign; never "-0.0".
QString numberText(double value, int decimals);

/// Always with a sign: "+0.9", "−0.4", "0.0".
QString signedText(double value, int decimals);

/// The number, or a dash if there is none.
QString numberOrDash(const std::optional<double>& value, int decimals);

/// The Problem as a sentence that begins with a capital letter.
QString sentence(const Problem& problem);

/// The first letter as a capital.
QString capitalised(QString text);

/// A sentence as written after a colon: in English with a small first letter.
QString afterColon(const QString& sentence);

/// With no-break spaces between a number and its unit, and in a range: "13 h 49 min", "2 – 3".
QString withNoBreakSpaces(QString text);

inline const QString dash = QStringLiteral("–");

} // namespace holdband::ui
