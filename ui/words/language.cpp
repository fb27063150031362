#include "ui/words/language.h"

#include "ui/words/text_catalogue.h"

#include <QCoreApplication>
#include <QFile>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <memory>

namespace holdband::ui {

namespace {

const QString english = QStringLiteral("en");

/// Qt's own texts that are on our buttons, for when Qt's catalogues are not installed.
[[maybe_unused]] constexpr const char* qtWords[] = {QT_TRANSLATE_NOOP("QPlatformTheme", "Close"),
                                                    QT_TRANSLATE_NOOP("QPlatformTheme", "Cancel"),
                                                    QT_TRANSLATE_NOOP("QPlatformTheme", "OK")};

QString catalogueOf(const QString& language)
{
    return QStringLiteral(":/translations/holdband_%1.ts").arg(language);
}

/// Those of the language before.
void removeCatalogues()
{
    qDeleteAll(QCoreApplication::instance()->findChildren<QTranslator*>(
        QString(), Qt::FindDirectChildrenOnly));
}

/// Installs the catalogue in the application if it has texts.
bool install(std::unique_ptr<QTranslator> catalogue, bool loaded)
{
    if (!loaded || !QCoreApplication::installTranslator(catalogue.get()))
        return false;
    catalogue.release()->setParent(QCoreApplication::instance());
    return true;
}

} // namespace

QString languageFor(const QStringList& preferred)
{
    for (const QString& locale : preferred) {
        const QString language =
            locale.section(QLatin1Char('-'), 0, 0).section(u'_', 0, 0).toLower();
        if (language == english || QFile::exists(catalogueOf(language)))
            return language;
    }
    return english;
}

bool loadLanguage(const QString& language)
{
    removeCatalogues();
    if (language == english)
        return true;
    auto qtTexts = std::make_unique<QTranslator>();
    const bool qtSpeaks = qtTexts->load(QLibraryInfo::path(QLibraryInfo::TranslationsPath) +
                                        QStringLiteral("/qtbase_%1.qm").arg(language));
    install(std::move(qtTexts), qtSpeaks);
    auto ourTexts = std::make_unique<TextCatalogue>();
    const bool weSpeak = ourTexts->read(catalogueOf(language));
    return install(std::move(ourTexts), weSpeak);
}

void useDesktopLanguage()
{
    loadLanguage(languageFor(QLocale::system().uiLanguages()));
}

} // namespace holdband::ui
