#include "ui/words/text_catalogue.h"

#include <QFile>
#include <QXmlStreamReader>

namespace holdband::ui {

namespace {

struct CatalogueText {
    QByteArray source;
    QByteArray remark;
    QStringList forms; ///< empty while the translation is unfinished
};

QByteArray keyOf(const QByteArray& context, const QByteArray& source, const QByteArray& remark)
{
    return context + '\0' + source + '\0' + remark;
}

/// Reads the element <translation>, to its end.
QStringList readForms(QXmlStreamReader& xml)
{
    const bool finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
    QStringList forms;
    QString text;
    while (xml.readNext() != QXmlStreamReader::EndElement && !xml.atEnd()) {
        if (xml.isCharacters())
            text += xml.text();
        else if (xml.isStartElement())
            forms += xml.readElementText();
    }
    if (forms.isEmpty() && !text.isEmpty())
        forms += text;
    return finished ? forms : QStringList();
}

/// Reads the element <message>, to its end.
CatalogueText readText(QXmlStreamReader& xml)
{
    CatalogueText text;
    while (xml.readNextStartElement()) {
        if (xml.name() == QStringLiteral("source"))
            text.source = xml.readElementText().toUtf8();
        else if (xml.name() == QStringLiteral("comment"))
            text.remark = xml.readElementText().toUtf8();
        else if (xml.name() == QStringLiteral("translation"))
            text.forms = readForms(xml);
        else
            xml.skipCurrentElement();
    }
    return text;
}

} // namespace

bool TextCatalogue::read(const QString& file)
{
    m_texts.clear();
    QFile source(file);
    if (!source.open(QIODevice::ReadOnly))
        return false;
    QXmlStreamReader xml(&source);
    QByteArray context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QStringLiteral("name")) {
            context = xml.readElementText().toUtf8();
        } else if (xml.name() == QStringLiteral("message")) {
            const CatalogueText text = readText(xml);
            if (!text.forms.isEmpty())
                m_texts.insert(keyOf(context, text.source, text.remark), text.forms);
        }
    }
    if (xml.hasError())
        m_texts.clear();
    return !m_texts.isEmpty();
}

QString TextCatalogue::translate(const char* context, const char* source, const char* remark,
                                 int count) const
{
    auto found = m_texts.find(keyOf(context, source, remark));
    if (found == m_texts.end() && remark && *remark)
        found = m_texts.find(keyOf(context, source, {}));
    if (found == m_texts.end())
        return {};
    return count == 1 ? found->first() : found->last();
}

} // namespace holdband::ui
