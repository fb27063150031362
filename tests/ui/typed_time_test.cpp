// Times as people type them, and the calendar beside them.
#include "core/text/times.h"
#include "tests/ui/dialog_test.h"
#include "tests/ui/form_samples.h"
#include "tests/ui/locale_of.h"
#include "ui/equipment/move_rows.h"
#include "ui/forms/day_picker.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/typed_time.h"
#include "ui/record/note_dialog.h"

#include <QAccessible>
#include <QAction>
#include <QCalendarWidget>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

/// "2026-10-27T18:00:00.000Z", or the problem.
std::string typedInUtc(const char* text)
{
    const auto at = readTypedTime(QString::fromUtf8(text), Zone::utc(),
                                  instantFromMs(1'793'000'000'000)); // 26 October 2026
    return at ? rfc3339Utc(*at) : at.error().what;
}

TEST(TypedTimes, AreReadAsTheLocaleWritesThem)
{
    {
        const LocaleOf us("en_US");
        EXPECT_EQ(typedInUtc("10/27/2026 6:00 pm"), "2026-10-27T18:00:00.000Z");
        EXPECT_EQ(typedInUtc("10/7/2026 18:00"), "2026-10-07T18:00:00.000Z");
        EXPECT_EQ(typedInUtc("6:30 pm"), "2026-10-26T18:30:00.000Z") << "today";
        EXPECT_EQ(typedInUtc("12:05 am"), "2026-10-26T00:05:00.000Z");
    }
    {
        const LocaleOf german("de_DE");
        EXPECT_EQ(typedInUtc("7.10.2026 18:00"), "2026-10-07T18:00:00.000Z");
    }
    EXPECT_EQ(typedInUtc("2026-10-07 18:00"), "2026-10-07T18:00:00.000Z");
    EXPECT_EQ(typedInUtc("6:30"), "2026-10-26T06:30:00.000Z") << "today";
    EXPECT_NE(typedInUtc("soon").find("soon"), std::string::npos);
    EXPECT_NE(typedInUtc("1772928000").find("1772928000"), std::string::npos)
        << "nobody types that";
}

TEST(TypedTimes, AreShownAsTheLocaleWritesThem)
{
    const Instant evening = denverTime("2026-10-27 18:00");
    EXPECT_EQ(typedTime(evening, us().zone), "2026-10-27 18:00") << "24 hours: ISO";
    for (const auto& [locale, text] : {std::pair{"en_US", "10/27/2026 6:00 pm"},
                                       {"en_AU", "27/10/2026 6:00 pm"},
                                       {"en_CA", "2026-10-27 6:00 pm"},
                                       {"de_DE", "2026-10-27 18:00"}}) {
        const LocaleOf spoken(locale);
        EXPECT_EQ(typedTime(evening, us().zone), text) << locale;
    }
}

TEST(TypedTimes, AreReadBackAsTheSameInstantInEveryLocale)
{
    for (const char* locale :
         {"C", "en_US", "en_GB", "en_AU", "en_CA", "de_DE", "ja_JP", "ar_EG"}) {
        const LocaleOf spoken(locale);
        Instant at = denverTime("2026-02-28 00:00");
        for (int i = 0; i < 500; ++i, at += std::chrono::minutes{793}) {
            const QString text = typedTime(at, us().zone);
            const auto read = readTypedTime(text, us().zone, at);
            ASSERT_TRUE(read) << locale << " " << text.toStdString();
            ASSERT_EQ(*read, at) << locale << " " << text.toStdString();
        }
        const QString exact =
            typedTime(at + std::chrono::seconds{7}, us().zone, TimeDetail::second);
        EXPECT_EQ(*readTypedTime(exact, us().zone, at), at + std::chrono::seconds{7}) << locale;
    }
}

TEST(TypedTimes, OfADoubledHourShowTheirOffsetWithTwelveHoursToo)
{
    const LocaleOf american("en_US");
    EXPECT_EQ(typedTime(*parseRfc3339("2026-11-01T08:30:00Z"), us().zone),
              "2026-11-01 01:30:00-07:00");
    InstantField field("Pitched");
    field.setZone(us().zone);
    field.show();
    QTest::keyClicks(field.edit(), "11/1/2026 1:30 am");
    EXPECT_FALSE(field.instant());
    ASSERT_TRUE(field.firstReading()->isVisible());
    field.firstReading()->click();
    EXPECT_EQ(*field.instant(), *parseRfc3339("2026-11-01T07:30:00Z"));
}

std::vector<Setup> oneSetup()
{
    std::vector<Setup> setups(1);
    setups.front().name = "Loop";
    return setups;
}

/// A shown, active field.
std::unique_ptr<InstantField> activeField(const char* time)
{
    auto field = std::make_unique<InstantField>("Pitched");
    field->setZone(us().zone);
    field->setInstant(denverTime(time));
    field->show();
    field->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(field.get()));
    field->edit()->setFocus();
    return field;
}

TEST(DayPickers, ChangeTheDateAndKeepTheTimeOfDay)
{
    const auto field = activeField("2026-03-07 18:12");
    int edited = 0;
    QObject::connect(field.get(), &InstantField::edited, [&] { ++edited; });
    QTest::keyClick(field->edit(), Qt::Key_Down, Qt::AltModifier);
    QCalendarWidget* calendar = field->days()->calendar();
    ASSERT_TRUE(calendar);
    EXPECT_EQ(calendar->selectedDate(), QDate(2026, 3, 7));
    EXPECT_EQ(calendar->accessibleName(), "Pitched: choose the day");
    auto* days = calendar->findChild<QTableView*>();
    QTest::keyClick(days, Qt::Key_Down);
    QTest::keyClick(days, Qt::Key_Return);
    EXPECT_FALSE(field->days()->calendar());
    EXPECT_EQ(field->edit()->text(), "2026-03-14 18:12");
    EXPECT_EQ(*field->instant(), denverTime("2026-03-14 18:12"));
    EXPECT_EQ(edited, 1) << "a form with unsaved changes asks before it closes";
    EXPECT_TRUE(field->edit()->hasFocus());
}

TEST(DayPickers, OpenByTheButtonAndCloseByEscape)
{
    const auto field = activeField("2026-03-07 18:12");
    auto* button = field->edit()->findChild<QToolButton*>();
    ASSERT_TRUE(button);
    EXPECT_EQ(QAccessible::queryAccessibleInterface(button)->text(QAccessible::Name),
              "Pitched: choose the day");
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(field->days()->calendar());
    auto* days = field->days()->calendar()->findChild<QTableView*>();
    QTest::keyClick(days, Qt::Key_Down);
    QTest::keyClick(days, Qt::Key_Escape);
    EXPECT_FALSE(field->days()->calendar());
    EXPECT_EQ(field->edit()->text(), "2026-03-07 18:12");
    EXPECT_TRUE(field->isVisible()) << "Escape closes the calendar alone";
}

TEST(DayPickers, WriteTwelveHoursWhereTheLocaleDoes)
{
    const LocaleOf american("en_US");
    const auto field = activeField("2026-03-07 18:12");
    EXPECT_EQ(field->edit()->text(), "3/7/2026 6:12 pm");
    field->days()->open();
    Q_EMIT field->days()->calendar()->clicked(QDate(2026, 10, 27));
    EXPECT_EQ(field->edit()->text(), "10/27/2026 6:12 pm");
    field->edit()->setText("7:05 am");
    field->days()->open();
    Q_EMIT field->days()->calendar()->clicked(QDate(2026, 10, 28));
    EXPECT_EQ(field->edit()->text(), "10/28/2026 7:05 am");
}

TEST(DayPickers, OpenInTheCellsOfATable)
{
    EditTable table("move", moveColumns(oneSetup(), us()), 1);
    table.model()->setRows({{{"2026-03-07 18:12", "Loop"}, 0}});
    table.show();
    table.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&table));
    table.view()->setCurrentIndex(table.model()->index(0, 0));
    table.view()->edit(table.model()->index(0, 0));
    auto* line = table.view()->findChild<QLineEdit*>();
    ASSERT_TRUE(line);
    QTest::keyClick(line, Qt::Key_Down, Qt::AltModifier);
    auto* picker = line->findChild<DayPicker*>();
    ASSERT_TRUE(picker && picker->calendar());
    QTest::keyClick(picker->calendar()->findChild<QTableView*>(), Qt::Key_Up);
    QTest::keyClick(picker->calendar()->findChild<QTableView*>(), Qt::Key_Return);
    QTest::keyClick(line, Qt::Key_Return);
    QCoreApplication::processEvents(); // the cell takes the text then
    EXPECT_EQ(table.model()->rows()[0].cells[0], "2026-02-28 18:12");
}

class TypedTimeDialogs : public DialogTest {};

TEST_F(TypedTimeDialogs, OfNotesHaveACalendar)
{
    const LocaleOf american("en_US");
    NoteDialog dialog(session, {}, nullptr, denverTime("2026-03-09 06:30"));
    dialog.show();
    settle();
    auto* picker = dialog.findChild<DayPicker*>();
    ASSERT_TRUE(picker);
    auto* time = qobject_cast<QLineEdit*>(picker->parent());
    EXPECT_EQ(time->text(), "3/9/2026 6:30 am");
    picker->open();
    Q_EMIT picker->calendar()->clicked(QDate(2026, 3, 10));
    EXPECT_EQ(time->text(), "3/10/2026 6:30 am");
}

} // namespace

} // namespace holdband::ui::test
