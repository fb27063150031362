// Names that look like markup remain names: in every tooltip and every label, on every page.
#include "core/exchange/load.h"
#include "tests/ui/sample_window.h"
#include "ui/theme/plain_tips.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QHelpEvent>
#include <QLabel>
#include <QToolTip>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

constexpr const char* hostile = "<b>A</b><img src=x>";

/// The small logbook's structure, with such a name wherever there is a name.
std::string hostileDescription()
{
    std::string text = R"json({"holdband":1,"zone":"America/Denver","units":"us",
      "setups":[{"name":"@ setup","rated_power_w":900,"ratings":{"@ rating":3},
                 "parts":[{"item":"@ part","quantity":1,"price":2}]},
                {"name":"Other","ratings":{"@ rating":2}}],
      "sensors":[{"name":"@ beer","reads":"beer","setup":"@ setup","read_by_hand":true}],
      "meters":[{"name":"@ meter","setup":"@ setup"},{"name":"Other meter","setup":"Other"}],
      "batches":[{"name":"@ batch","setup":"@ setup","pitched":"2026-03-01 00:00",
          "ended":"2026-03-03 00:00","beer_sensor":"@ beer","tolerance_c":1,
          "schedule":[{"stage":"@ stage","target_c":20}]},
         {"name":"@ second","setup":"Other","pitched":"2026-03-04 00:00",
          "ended":"2026-03-06 00:00","beer_sensor":"@ beer","tolerance_c":1,
          "schedule":[{"stage":"@ stage","target_c":20}]},
         {"name":"@ open","setup":"@ setup","pitched":"2026-03-10 00:00","beer_sensor":"@ beer",
          "tolerance_c":1,"schedule":[{"stage":"@ stage","target_c":20}]}],
      "files":[{"file":"hostile.csv","columns":{"@ beer":"Beer (C)"}}],
      "journal":[{"batch":"@ batch","at":"2026-03-01 12:00","text":"@ note"}],
      "meter_readings":[{"meter":"@ meter","at":"2026-03-01 00:00","kwh":1,"note":"@ remark"},
          {"meter":"@ meter","at":"2026-03-03 00:00","kwh":3},
          {"meter":"Other meter","at":"2026-03-04 00:00","kwh":3},
          {"meter":"Other meter","at":"2026-03-06 00:00","kwh":4}]})json";
    for (std::size_t at = text.find('@'); at != text.npos; at = text.find('@', at))
        text.replace(at, 1, hostile);
    return text;
}

/// Escaped markup is plain text.
bool isMarkup(const QString& text)
{
    return Qt::mightBeRichText(text) && text.contains(QStringLiteral("<img"));
}

QString tipAt(QWidget& widget, QPoint at)
{
    QToolTip::hideText();
    QHelpEvent help(QEvent::ToolTip, at, widget.mapToGlobal(at));
    QApplication::sendEvent(&widget, &help);
    return QToolTip::text();
}

class PlainTipsTest : public WindowTest {
protected:
    int tipsSeen = 0;

    void lookAtCells(QAbstractItemView& view)
    {
        const QAbstractItemModel* model = view.model();
        for (int row = 0; model && row < std::min(model->rowCount(), 20); ++row) {
            for (int column = 0; column < model->columnCount(); ++column) {
                const QModelIndex index = model->index(row, column);
                const QString said = tipAt(*view.viewport(), view.visualRect(index).center());
                EXPECT_FALSE(isMarkup(said)) << said.toStdString();
                tipsSeen += said.contains(QStringLiteral("&lt;img")) ? 1 : 0;
            }
        }
    }

    void lookAt(QWidget& page)
    {
        for (QWidget* widget : page.findChildren<QWidget*>()) {
            if (!widget->isVisible())
                continue;
            const QString said = tipAt(*widget, widget->rect().center());
            EXPECT_FALSE(isMarkup(said)) << widget->metaObject()->className() << said.toStdString();
            tipsSeen += said.contains(QStringLiteral("&lt;img")) ? 1 : 0;
            if (auto* view = qobject_cast<QAbstractItemView*>(widget))
                lookAtCells(*view);
            const auto* label = qobject_cast<QLabel*>(widget);
            EXPECT_FALSE(label && label->textFormat() == Qt::AutoText && isMarkup(label->text()))
                << label->text().toStdString();
            EXPECT_FALSE(label && label->textFormat() == Qt::RichText && isMarkup(label->text()));
        }
    }
};

} // namespace

TEST_F(PlainTipsTest, NoNameIsReadAsMarkupOnAnyPage)
{
    write(QStringLiteral("hostile.csv"),
          "Time,Beer (C)\n2026-03-01 00:00,20\n2026-03-01 01:00,20\n2026-03-01 02:00,23\n"
          "2026-03-01 03:00,20\n2026-03-04 01:00,20\n2026-03-04 02:00,20\n");
    write(QStringLiteral("d.json"), hostileDescription());
    const QString logbook = path(QStringLiteral("hostile.holdband"));
    const auto loaded = exchange::loadDescription(
        core(logbook), core(path(QStringLiteral("d.json"))), [] { return Instant(now()); });
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto window = openWindow(logbook);
    for (const PageId page : {PageId::rounds, PageId::run, PageId::sideBySide, PageId::nextBatch,
                              PageId::equipment, PageId::imports}) {
        window->setPage(page);
        settle(*window);
        lookAt(*window);
    }
    EXPECT_GT(tipsSeen, 3) << "such tips are there, escaped";
}

TEST(Tip, IsThePlainText)
{
    EXPECT_EQ(tip(QStringLiteral("12 h, from 3 < 4")), QStringLiteral("12 h, from 3 < 4"));
    EXPECT_TRUE(tip(QString::fromLatin1(hostile)).contains(QStringLiteral("&lt;b&gt;A")));
}

} // namespace holdband::ui::test
