// The texts of one language as Qt Linguist edits them (a .ts file, XML), read when the program
// starts. It needs no compiling, so that a build needs no translation tools.
#pragma once

#include <QByteArray>
#include <QHash>
#include <QStringList>
#include <QTranslator>

namespace holdband::ui {

class TextCatalogue : public QTranslator {
    Q_OBJECT
public:
    using QTranslator::QTranslator;

    /// Reads the finished texts of a .ts file. False: it can't be read to its end, or has no texts;
    /// the catalogue is then empty.
    bool read(const QString& file);

    /// The text with that remark, else the one without a remark; null if there is neither. Of
    /// plural forms the first is for a count of 1 and the last for any other, as in German.
    QString translate(const char* context, const char* source, const char* remark = nullptr,
                      int count = -1) const override;

    bool isEmpty() const override { return m_texts.isEmpty(); }

private:
    /// For a text without plural forms, its one form.
    QHash<QByteArray, QStringList> m_texts;
};

} // namespace holdband::ui
