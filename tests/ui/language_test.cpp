// The window in another language: which one is chosen, that German is complete, and that every text
// of the window is in the catalogues.
#include "tests/ui/dialog_test.h"
#include "tests/ui/spoken.h"
#include "tests/ui/underlined.h"
#include "ui/equipment/round_rows.h"
#include "ui/window/language_choice.h"
#include "ui/window/text_size.h"
#include "ui/words/choice_text.h"
#include "ui/words/language.h"
#include "ui/words/text_catalogue.h"
#include "ui/words/words.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QRegularExpression>
#include <QTabBar>
#include <QTemporaryFile>
#include <array>
#include <cstring>
#include <gmock/gmock.h>

namespace holdband::ui::test {

using ::testing::HasSubstr;

TEST(Language, IsTheFirstPreferredOneWithACatalogue)
{
    EXPECT_EQ(languageFor({"de-AT", "en-US"}), "de");
    EXPECT_EQ(languageFor({"de_DE"}), "de");
    EXPECT_EQ(languageFor({"en-GB", "de-DE"}), "en");
    EXPECT_EQ(languageFor({"tlh", "de"}), "de");
    EXPECT_EQ(languageFor({"tlh"}), "en");
    EXPECT_EQ(languageFor({}), "en");
}

TEST(Language, EnglishCountsWithoutACatalogue)
{
    EXPECT_EQ(Words::counted("%n setups", "%n setup", 0), "0 setups");
    EXPECT_EQ(Words::counted("%n setups", "%n setup", 1), "1 setup");
    EXPECT_EQ(Words::counted("%n setups", "%n setup", 2), "2 setups");
}

TEST(Language, GermanCountsByItsOwnForms)
{
    const German german;
    ASSERT_TRUE(german.loaded());
    EXPECT_EQ(Words::counted("%n setups", "%n setup", 1), "1 Anlage");
    EXPECT_EQ(Words::counted("%n setups", "%n setup", 12), "12 Anlagen");
    EXPECT_EQ(wordsLocale().language(), QLocale::German);
    EXPECT_EQ(numberText(3.25, 2), "3,25");
}

/// Writes a catalogue of these messages and reads it back.
bool readMessages(TextCatalogue& catalogue, const QString& messages)
{
    QTemporaryFile file;
    EXPECT_TRUE(file.open());
    file.write((QStringLiteral("<TS><context><name>Words</name>") + messages +
                QStringLiteral("</context></TS>"))
                   .toUtf8());
    file.close();
    return catalogue.read(file.fileName());
}

TEST(TextCatalogue, GivesTheFinishedTextOfAContextAndRemark)
{
    TextCatalogue catalogue;
    ASSERT_TRUE(readMessages(
        catalogue,
        "<message><source>a &lt; b</source><translation>A &lt; B</translation></message>"
        "<message><source>open</source><comment>batch</comment>"
        "<translation>offen</translation></message>"
        "<message><source>late</source><translation type=\"unfinished\">x</translation></message>"
        "<message><source>old</source><translation type=\"vanished\">x</translation></message>"));
    EXPECT_EQ(catalogue.translate("Words", "a < b"), "A < B");
    EXPECT_EQ(catalogue.translate("Words", "a < b", "no such remark"), "A < B");
    EXPECT_EQ(catalogue.translate("Words", "open", "batch"), "offen");
    EXPECT_TRUE(catalogue.translate("Words", "open").isNull());
    EXPECT_TRUE(catalogue.translate("Phrase", "a < b").isNull());
    EXPECT_TRUE(catalogue.translate("Words", "late").isNull());
    EXPECT_TRUE(catalogue.translate("Words", "old").isNull());
}

TEST(TextCatalogue, ChoosesThePluralFormByTheCount)
{
    TextCatalogue catalogue;
    ASSERT_TRUE(readMessages(catalogue,
                             "<message numerus=\"yes\"><source>%n cells</source><translation>\n"
                             "<numerusform>%n Zelle</numerusform>\n"
                             "<numerusform>%n Zellen</numerusform></translation></message>"));
    EXPECT_EQ(catalogue.translate("Words", "%n cells", nullptr, 1), "%n Zelle");
    EXPECT_EQ(catalogue.translate("Words", "%n cells", nullptr, 0), "%n Zellen");
    EXPECT_EQ(catalogue.translate("Words", "%n cells", nullptr, 7), "%n Zellen");
}

TEST(TextCatalogue, IsEmptyWhereTheFileIsMissingCutOrWithoutTexts)
{
    TextCatalogue catalogue;
    EXPECT_FALSE(catalogue.read("/nonexistent/holdband_xx.ts"));
    EXPECT_FALSE(readMessages(catalogue, "<message><source>open</source>"));
    EXPECT_FALSE(readMessages(
        catalogue, "<message><source>a</source><translation>A</translation></message><message>"));
    EXPECT_FALSE(readMessages(catalogue, ""));
    EXPECT_TRUE(catalogue.isEmpty());
}

QAction* choiceIn(const QMenu& menu, const QString& text)
{
    for (QAction* action : menu.findChildren<QAction*>()) {
        if (action->text() == text)
            return action;
    }
    return nullptr;
}

TEST(TextSize, AsksForAnotherWindowWhichHasTheChosenSize)
{
    const QFont usual = QApplication::font();
    applyStoredTextSize(*qApp); // as at the start
    QMenu menu;
    int asked = 0;
    addTextSizeMenu(menu, [&] { ++asked; });
    for (const auto& [choice, times] :
         {std::pair{"150 %", 1.5}, {"200 %", 2.0}, {"As the &desktop", 1.0}}) {
        QAction* action = choiceIn(menu, choice);
        ASSERT_TRUE(action) << choice;
        action->trigger();
        applyStoredTextSize(*qApp);
        EXPECT_NEAR(QApplication::font().pointSizeF(), times * usual.pointSizeF(), 0.01) << choice;
    }
    EXPECT_EQ(asked, 3);
    QApplication::setFont(usual);
}

class LanguageWindow : public WindowTest {
protected:
    static constexpr std::array pages{PageId::rounds,    PageId::run,       PageId::sideBySide,
                                      PageId::nextBatch, PageId::equipment, PageId::imports};
};

TEST_F(LanguageWindow, SpeaksGermanWithItsDecimalCommaAndItsDates)
{
    const German german;
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    QStringList seen;
    for (const auto* label : window->findChildren<QLabel*>())
        seen << label->text();
    const std::string all = QString(seen.join(u'\n')).replace(QChar(0xa0), u' ').toStdString();
    EXPECT_THAT(all, HasSubstr("Verließ das Band einmal"));
    EXPECT_THAT(all, ::testing::ContainsRegex("[0-9],[0-9] %"));
    EXPECT_THAT(all, ::testing::Not(::testing::ContainsRegex("[0-9]\\.[0-9]+ (%|°|kWh)")));
    EXPECT_THAT(all, HasSubstr("Mär"));
}

TEST(UsualRounds, AreStoredInEnglishAndShownInTheReadersLanguage)
{
    const German german;
    ASSERT_TRUE(german.loaded());
    std::vector<EditRow> rows = roundRows(usualRounds());
    EXPECT_EQ(rows.at(0).cells.at(0), "Morgen");
    EXPECT_EQ(rows.at(1).cells.at(0), "Abend");
    rows.at(1).cells[0] = "Nach der Arbeit";
    const auto stored = roundsOf(rows);
    ASSERT_TRUE(stored);
    EXPECT_EQ(stored->at(0).label, "Morning");
    EXPECT_EQ(stored->at(1).label, "Nach der Arbeit") << "as it was written";
}

TEST_F(LanguageWindow, UnderlinesNoLetterTwiceInGerman)
{
    const German german;
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    for (const PageId page : pages) {
        window->setPage(page);
        settle(*window);
        const QStringList twice = underlinedTwice(*window);
        EXPECT_TRUE(twice.isEmpty()) << twice.join(", ").toStdString();
    }
}

namespace {

/// Marks each text that goes through a catalogue with signs that no text contains.
class Marker : public QTranslator {
public:
    QString translate(const char* context, const char* text, const char* remark,
                      int count) const override
    {
        static const QStringList own{"Words", "Phrase", "QPlatformTheme"};
        if (!own.contains(QLatin1String(context)))
            return {};
        if (remark && (qstrcmp(remark, "pattern of a date") == 0 || std::strstr(remark, "code of")))
            return {};
        QString whole = QString::fromUtf8(text);
        if (count >= 0)
            whole.replace(QStringLiteral("%n"), QString::number(count));
        return u'⟦' + whole + u'⟧';
    }
    bool isEmpty() const override { return false; }
};

/// The parts of a text not from a catalogue: words outside the signs that are no name of the small
/// logbook, no unit, no key and no number.
QString unmarked(QString text)
{
    static const QRegularExpression marked(QStringLiteral("⟦[^⟦⟧]*⟧"));
    while (text.contains(marked))
        text.remove(marked);
    static const QRegularExpression own(
        QStringLiteral("Pale|(Loop|Cabinet) (meter|beer|room)|Loop|Cabinet|coolant "
                       "loop|cabinet|holdband|gal\\b|Primary|Room|"
                       "Holdband|Denver|America|small|kWh|USD|°F|\\bmin\\b|"
                       "Ferment|Crash|Alt\\+\\w|Ctrl\\+\\w|Shift|PDF|CSV|English|Deutsch|UTC"));
    text.remove(own);
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{3,}"));
    return word.match(text).captured();
}

QStringList headings(const QHeaderView& header)
{
    QStringList all;
    for (int i = 0; header.isVisible() && header.model() && i < header.count(); ++i)
        all << header.model()->headerData(i, header.orientation()).toString();
    return all;
}

QStringList items(const QComboBox& box)
{
    QStringList all;
    for (int i = 0; i < box.count() && box.count() < 30; ++i) // there are many zones
        all << box.itemText(i);
    return all;
}

/// Everything in the widget that a person can read or hear.
QStringList textsOf(const QWidget& widget)
{
    QStringList texts{widget.accessibleName(), widget.accessibleDescription(), widget.toolTip()};
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        texts << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        texts << button->text();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        texts << line->placeholderText();
    if (const auto* box = qobject_cast<const QComboBox*>(&widget))
        texts << items(*box);
    if (const auto* header = qobject_cast<const QHeaderView*>(&widget))
        texts << headings(*header);
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) {
        for (int i = 0; i < tabs->count(); ++i)
            texts << tabs->tabText(i);
    }
    for (const QAction* action : widget.actions())
        texts << action->text();
    return texts;
}

void expectMarked(const QWidget& top, const std::string& where)
{
    for (const auto* widget : top.findChildren<QWidget*>()) {
        if (!widget->isVisible())
            continue;
        for (const QString& text : textsOf(*widget)) {
            EXPECT_EQ(unmarked(text).toStdString(), "")
                << where << ", " << widget->metaObject()->className() << ": " << text.toStdString();
        }
    }
}

} // namespace

TEST_F(LanguageWindow, HasNoTextOutsideTheCatalogues)
{
    Marker marker;
    const Spoken spoken(marker, QLocale::c());
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    for (const PageId page : pages) {
        window->setPage(page);
        settle(*window);
        expectMarked(*window, "page " + std::to_string(static_cast<int>(page)));
    }
}

TEST_F(LanguageWindow, HasNoTextOutsideTheCataloguesInItsDialogs)
{
    Marker marker;
    const Spoken spoken(marker, QLocale::c());
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 2"));
    settle(*window);
    int opened = 0;
    for (const char* wanted :
         {"&Report…", "&Units, zone and currency…", "&Backups…", "&Journal note…", "Journa&l…",
          "&Readings…", "&History…", "&New batch…", "&Pitch now…", "&Turn down now…", "&End now…",
          "&Change this batch…", "The run as &tables…"}) {
        const QString text = u'⟦' + QString::fromUtf8(wanted) + u'⟧';
        for (QAction* action : window->findChildren<QAction*>()) {
            if (action->text() != text)
                continue;
            action->trigger();
            settle(*window);
            for (const QPointer<QDialog> dialog : window->findChildren<QDialog*>()) {
                if (!dialog || !dialog->isVisible())
                    continue;
                ++opened;
                EXPECT_EQ(unmarked(dialog->windowTitle()).toStdString(), "") << wanted;
                expectMarked(*dialog, wanted);
                delete dialog;
            }
        }
    }
    EXPECT_GE(opened, 12);
}

} // namespace holdband::ui::test
