#include "core/text/phrase.h"

#include "core/text/catalogue.h"

#include <QCoreApplication>
#include <algorithm>

namespace holdband {

namespace {

/// Without a translation Qt returns the English text with its %n filled in.
QString english(const char* text, int count)
{
    return QString::fromUtf8(text).replace(QStringLiteral("%n"), QString::number(count));
}

} // namespace

QString countedText(const char* context, const char* many, const char* one, std::uint64_t count)
{
    constexpr std::uint64_t most = 2'000'000'000;
    const int shown = static_cast<int>(std::min(count, most));
    const QString found = QCoreApplication::translate(context, many, one, shown);
    return found == english(many, shown) && shown == 1 ? english(one, shown) : found;
}

Phrase Phrase::tr(const char* english, const char* remark)
{
    return Phrase(QCoreApplication::translate("Phrase", english, remark).toStdString());
}

Phrase Phrase::counted(const char* many, const char* one, std::uint64_t count)
{
    return Phrase(countedText("Phrase", many, one, count).toStdString());
}

std::string Phrase::filled(const std::vector<std::string_view>& parts) const
{
    std::string text;
    for (std::size_t i = 0; i < m_text.size(); ++i) {
        const bool place = m_text[i] == '%' && i + 1 < m_text.size() && m_text[i + 1] >= '1' &&
                           m_text[i + 1] <= '9';
        const std::size_t part = place ? static_cast<std::size_t>(m_text[i + 1] - '1') : 0;
        if (place && part < parts.size()) {
            text += parts[part];
            ++i;
        } else {
            text += m_text[i];
        }
    }
    return text;
}

} // namespace holdband
