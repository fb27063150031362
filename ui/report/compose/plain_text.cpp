#include "ui/report/compose/plain_text.h"

#include <QRegularExpression>

namespace holdband::report {

namespace {

bool turnsDirection(char16_t c)
{
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}

} // namespace

QString calm(const QString& text)
{
    QString result;
    result.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        const bool pair =
            c.isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate();
        if (pair) {
            result += c;
            result += text[++i];
        } else if (c.category() == QChar::Other_Control || c == QChar::LineSeparator ||
                   c == QChar::ParagraphSeparator) {
            result += u' ';
        } else if (!c.isSurrogate() && c.unicode() < 0xFFFE && !turnsDirection(c.unicode())) {
            result += c;
        }
    }
    return result;
}

QString unbroken(const QString& text)
{
    // A line may end after a dash even before a no-break space, but not before a word joiner.
    static const QRegularExpression dash(QStringLiteral("(?<=[0-9]) – (?=[0-9−-])"));
    static const QRegularExpression unit(
        QStringLiteral("(?<=[0-9]) (?=°|%|(?:kWh|Wh|W|h|min|s|d|days?|Tagen?|Tage|gal|l)\\b)|"
                       "(?<=±) (?=[0-9])"));
    return QString(text)
        .replace(dash, QStringLiteral("\u00A0–\u2060\u00A0"))
        .replace(unit, QString(QChar::Nbsp));
}

QString shortened(const QString& text, qsizetype most)
{
    QString result = calm(text);
    if (result.size() <= most)
        return result;
    result.truncate(most - 1);
    if (result.back().isHighSurrogate())
        result.chop(1);
    return result + QChar(0x2026);
}

} // namespace holdband::report
