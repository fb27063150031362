// Sets a language while a test runs.
#pragma once

#include "ui/words/text_catalogue.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

namespace holdband::ui::test {

/// Installs a catalogue and sets the locale; restores both afterwards.
class Spoken {
public:
    Spoken(QTranslator& translator, const QLocale& locale) : m_translator(&translator)
    {
        QLocale::setDefault(locale);
        QCoreApplication::installTranslator(m_translator);
    }
    ~Spoken()
    {
        QCoreApplication::removeTranslator(m_translator);
        QLocale::setDefault(QLocale::c());
    }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;

private:
    QTranslator* m_translator;
};

/// The German catalogue that the program carries.
class German {
public:
    German() : m_loaded(m_translator.read(QStringLiteral(":/translations/holdband_de.ts"))) {}
    bool loaded() const { return m_loaded; }

private:
    TextCatalogue m_translator;
    bool m_loaded;
    Spoken m_spoken{m_translator, QLocale(QLocale::German, QLocale::Germany)};
};

} // namespace holdband::ui::test
