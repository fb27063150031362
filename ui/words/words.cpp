#include "ui/words/words.h"

#include "core/text/catalogue.h"
#include "core/text/numbers.h"
#include "ui/words/choice_text.h"

#include <QLocale>
#include <QRegularExpression>

namespace holdband::ui {

QString Words::counted(const char* many, const char* one, std::uint64_t count)
{
    return countedText("Words", many, one, count);
}

char decimalSign()
{
    return QLocale().decimalPoint() == QStringLiteral(",") ? ',' : '.';
}

QString numberText(double value, int decimals)
{
    return shown(fixedText(value, decimals, decimalSign()));
}

QString signedText(double value, int decimals)
{
    const QString size = numberText(std::abs(value), decimals);
    if (size == numberText(0.0, decimals))
        return size;
    return (value < 0.0 ? QStringLiteral("−") : QStringLiteral("+")) + size;
}

QString numberOrDash(const std::optional<double>& value, int decimals)
{
    return value ? numberText(*value, decimals) : dash;
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString sentence(const Problem& problem)
{
    const QString text = shown(problem.sentence());
    return problem.place.empty() ? capitalised(text) : text;
}

QString afterColon(const QString& sentence)
{
    const bool small = wordsLocale().language() == QLocale::English;
    return small ? sentence.left(1).toLower() + sentence.mid(1) : sentence;
}

QString withNoBreakSpaces(QString text)
{
    static const QRegularExpression unit(
        QStringLiteral("(?<=\\d) (?=(?:s|min|h|d|days?|kWh|W|°F|°C)\\b|%)"));
    static const QRegularExpression minutes(QStringLiteral("(?<=\\d\u00a0h) (?=\\d+\u00a0min)"));
    static const QRegularExpression range(QStringLiteral("(?<=\\d) – (?=\\d)"));
    text.replace(unit, QStringLiteral("\u00a0"));
    text.replace(range, QStringLiteral("\u00a0–\u00a0"));
    return text.replace(minutes, QStringLiteral("\u00a0"));
}

} // namespace holdband::ui
