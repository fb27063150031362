#include "ui/rounds/rounds_page.h"

#include "core/text/times.h"
#include "ui/rounds/paper_sheet.h"
#include "ui/rounds/round_entry.h"
#include "ui/rounds/round_line.h"
#include "ui/rounds/round_time.h"
#include "ui/rounds/rounds_grid.h"
#include "ui/rounds/running_view.h"
#include "ui/rounds/week_sparkline.h"
#include "ui/session/session.h"
#include "ui/theme/card.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>
#include <map>

namespace holdband::ui {

RoundsPage::RoundsPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_card(new Card({}, this)),
      m_gridLayout(new QGridLayout), m_time(new RoundTime(this)),
      m_save(new QPushButton(Words::tr("&Save the round"), this)),
      m_message(makeLabel({}, "muted", this)), m_grid(new RoundsGrid(session, this)),
      m_running(new RunningView(session, this)),
      m_empty(new EmptyPage(EmptyExample::rounds,
                            Words::tr("A round reads every meter in a minute, twice a day: add the "
                                      "first meter."),
                            Words::tr("Add a &meter…"), this))
{
    m_gridLayout->setHorizontalSpacing(14);
    m_gridLayout->setVerticalSpacing(6);
    m_gridLayout->setColumnStretch(1, 3);
    m_gridLayout->setColumnStretch(2, 3);
    m_gridLayout->setColumnStretch(3, 2);
    m_gridLayout->setColumnStretch(5, 3);
    m_gridLayout->setColumnStretch(7, 6);
    m_card->contents()->addLayout(m_gridLayout);
    m_card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    layOut();
    setRole(m_save, "main");
    connect(m_save, &QPushButton::clicked, this, &RoundsPage::save);
    connect(m_empty->button(), &QPushButton::clicked, this, &RoundsPage::meterWanted);
    connect(m_time, &RoundTime::entered, this, &RoundsPage::takeTime);
    connect(m_time, &RoundTime::changed, this, &RoundsPage::refreshSheet);
    connect(m_grid, &RoundsGrid::turned, this, &RoundsPage::refreshSheet);
    connect(m_running, &RunningView::failed, this,
            [this](const QString& sentence) { say(sentence, true); });
    connect(m_grid, &RoundsGrid::corrected, this,
            [this](const QString& words) { say(words, false); });
    auto* clock = new QTimer(this); // updates ages, expected ranges and the time
    clock->start(std::chrono::seconds{30});
    connect(clock, &QTimer::timeout, this, [this] {
        if (isVisible() && m_session->isOpen())
            refreshSheet();
    });
}

void RoundsPage::layOut()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    column->addWidget(m_card);
    column->addWidget(makeBar());
    column->addWidget(m_grid);
    column->addWidget(m_running);
    column->addWidget(makePaperRow());
    column->addStretch();
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);
    layout->addWidget(m_empty);
    m_area = area;
    m_empty->hide();
}

QWidget* RoundsPage::makeBar()
{
    auto* bar = new QWidget(this);
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(spacing::card, 0, 0, 0);
    auto* keys =
        makeLabel(Words::tr("Enter: next field · Ctrl+Enter: save the round ·"), "muted", bar);
    keys->setWordWrap(false);
    layout->addWidget(keys);
    layout->addWidget(m_time);
    layout->addSpacing(12);
    layout->addWidget(m_message, 1);
    layout->addWidget(m_save);
    return bar;
}

QWidget* RoundsPage::makePaperRow()
{
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(spacing::card, 0, 0, 0);
    QLabel* words = makeLabel(Words::tr("A paper sheet for two weeks of rounds:"), "muted", row);
    words->setWordWrap(false);
    layout->addWidget(words);
    auto* pdf = new QPushButton(Words::tr("Round sheet as P&DF…"), row);
    auto* print = new QPushButton(Words::tr("&Print it…"), row);
    layout->addWidget(pdf);
    layout->addWidget(print);
    layout->addStretch();
    connect(pdf, &QPushButton::clicked, this, &RoundsPage::askPaper);
    connect(print, &QPushButton::clicked, this, &RoundsPage::printPaper);
    return row;
}

void RoundsPage::askPaper()
{
    const QString path = QFileDialog::getSaveFileName(
        this, Words::tr("Round sheet"), Words::tr("rounds.pdf"), QStringLiteral("PDF (*.pdf)"));
    if (!path.isEmpty())
        savePaper(path);
}

void RoundsPage::savePaper(const QString& path)
{
    const Done written = writePaperSheet(m_grid->model()->sheet(), path);
    if (written)
        say(Words::tr("The round sheet is in %1.").arg(QFileInfo(path).fileName()), false);
    else
        say(sentence(written.error()), true);
}

void RoundsPage::printPaper()
{
    QPrinter printer;
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    QPainter painter(&printer);
    paintPaperSheet(paperSheet(m_grid->model()->sheet()), printer, painter);
}

void RoundsPage::refresh()
{
    refreshSheet();
    m_running->refresh();
}

void RoundsPage::refreshSheet()
{
    const results::RoundsRequest request{m_time->typed(), m_grid->sheetsBack(), decimalSign()};
    m_session->ask<results::RoundsSheet>(
        this,
        [request](const store::LogbookFile& file) { return results::reviewRounds(file, request); },
        [this](Result<results::RoundsSheet> sheet) {
            if (sheet)
                takeSheet(std::move(*sheet));
            else
                say(sentence(sheet.error()), true);
        });
}

void RoundsPage::clear()
{
    rebuildRows({});
    m_grid->clear();
    m_running->clear();
    m_subtitle.clear();
    m_time->backToNow();
    say({}, false);
}

void RoundsPage::takeSheet(results::RoundsSheet sheet)
{
    const auto past = std::find_if(sheet.rows.begin(), sheet.rows.end(),
                                   [](const results::RoundRow& row) { return !row.toRead; });
    const bool same = std::equal(sheet.rows.begin(), past, m_rows.begin(), m_rows.end(),
                                 [](const results::RoundRow& a, const RoundLine* b) {
                                     return shown(a.name) == b->name() && a.kind == b->kind();
                                 });
    if (!same)
        rebuildRows(sheet);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i]->setTemperatureUnit(sheet.settings.temperatureUnit());
        m_rows[i]->setSheetRow(sheet.rows[i], sheet.now, sheet.zone);
        m_rows[i]->setEnabled(!m_session->readOnly());
    }
    m_area->setHidden(sheet.rows.empty());
    m_empty->setVisible(sheet.rows.empty());
    m_empty->button()->setEnabled(!m_session->readOnly());
    showWeeks();
    m_save->setEnabled(!m_session->readOnly() && !m_rows.empty());
    m_time->setNow(sheet.now, sheet.zone, sheet.settings.timeDoubt);
    m_subtitle = roundTitle(sheet);
    m_grid->setSheet(std::move(sheet));
    Q_EMIT sheetShown();
}

void RoundsPage::addHeading()
{
    const std::pair<int, const char*> headings[] = {{2, QT_TRANSLATE_NOOP("Words", "last reading")},
                                                    {3, QT_TRANSLATE_NOOP("Words", "expected now")},
                                                    {5, QT_TRANSLATE_NOOP("Words", "reading")},
                                                    {7, QT_TRANSLATE_NOOP("Words", "note")}};
    for (const auto& [column, words] : headings) {
        QLabel* label = makeLabel(Words::tr(words), "muted", m_card);
        label->setWordWrap(false);
        m_gridLayout->addWidget(label, 0, column);
    }
    m_weekHeading = makeLabel(Words::tr("last 7 days"), "muted", m_card);
    m_weekHeading->setWordWrap(false);
    m_gridLayout->addWidget(m_weekHeading, 0, 4);
}

void RoundsPage::rebuildRows(const results::RoundsSheet& sheet)
{
    std::map<QString, RoundLine::Texts> typed; // typed texts are put back where they were
    QString focused;
    bool hadFocus = false;
    for (RoundLine* row : m_rows) {
        typed[row->name()] = row->texts();
        hadFocus = hadFocus || row->hasFocus();
        if (row->hasFocus())
            focused = row->name();
        delete row;
    }
    m_rows.clear();
    m_entered = nullptr;
    clearLayout(m_gridLayout);
    addHeading();
    for (const results::RoundRow& each : sheet.rows) {
        if (!each.toRead)
            continue;
        auto* row =
            new RoundLine(each, m_gridLayout, 1 + 2 * static_cast<int>(m_rows.size()), m_card);
        m_rows.push_back(row);
        if (const auto before = typed.find(row->name()); before != typed.end())
            row->putTyped(before->second);
        connect(row, &RoundLine::tablePasted, this, &RoundsPage::tablePasted);
        connect(row, &RoundLine::replaced, this, [this, row] { replaceMeter(row); });
        connect(row, &RoundLine::checkWanted, this, [this, row] { check(row); });
        connect(row, &RoundLine::entered, this, [this, row] { enterRow(row); });
        connect(row, &RoundLine::settled, this, [this, row] { rowSettled(row); });
        connect(row, &RoundLine::stepped, this, [this, row](int by) { step(row, by); });
        connect(row, &RoundLine::edited, this, [this] {
            m_saveWanted = false; // the fields have changed since the save was requested
            say({}, false);
        });
    }
    if (RoundLine* same = row(focused))
        same->field()->setFocus();
    else if (hadFocus)
        focusFirst();
    if (m_rows.empty())
        m_gridLayout->addWidget(
            makeLabel(Words::tr("No meter is in service. Add one on the Equipment page (Alt+5)."),
                      "muted", m_card),
            1, 1, 1, 7);
}

/// In a narrow page the fields need the room of the week's charts.
void RoundsPage::showWeeks()
{
    constexpr double leastLines = 50.0; // width in heights of a line
    const bool room = width() >= leastLines * fontMetrics().height();
    bool any = false;
    for (const RoundLine* row : m_rows) {
        if (!row->week())
            continue;
        row->week()->setRoom(room);
        any = any || (room && !row->week()->week().rates.empty());
    }
    if (m_weekHeading)
        m_weekHeading->setVisible(any);
}

void RoundsPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    showWeeks();
}

void RoundsPage::step(RoundLine* from, int by)
{
    const auto found = std::find(m_rows.begin(), m_rows.end(), from);
    const auto to = std::distance(m_rows.begin(), found) + by;
    if (to >= 0 && to < std::ssize(m_rows))
        m_rows[static_cast<std::size_t>(to)]->field()->setFocus();
}

/// Uses a typed time at once, and updates the expected ranges for it.
void RoundsPage::takeTime()
{
    const auto at = m_time->at(m_session->now());
    if (!at)
        return say(sentence(at.error()), true);
    if (*at > m_session->now())
        return say(Words::tr("That is still to come; a round can be typed later, not before."),
                   true);
    say({}, false);
    refreshSheet();
    focusFirst();
}

RoundLine* RoundsPage::row(const QString& name) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](const RoundLine* row) { return row->name() == name; });
    return found == m_rows.end() ? nullptr : *found;
}

bool RoundsPage::hasTyped() const
{
    return std::any_of(m_rows.begin(), m_rows.end(), [](const RoundLine* row) {
        return row->state() != RoundLine::State::empty;
    });
}

QString RoundsPage::message() const
{
    return m_message->text();
}

/// Focuses the first field that is empty or needs attention; else the first.
void RoundsPage::focusFirst()
{
    if (m_rows.empty())
        return;
    const auto open = std::find_if(m_rows.begin(), m_rows.end(), [](const RoundLine* row) {
        return row->state() != RoundLine::State::fine;
    });
    (open == m_rows.end() ? m_rows.front() : *open)->field()->setFocus();
}

void RoundsPage::say(const QString& words, bool trouble)
{
    setRole(m_message, trouble ? "warn" : "muted");
    m_message->setText(words);
    m_message->setAccessibleName(words);
}

void RoundsPage::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers().testFlag(Qt::ControlModifier))
        return save();
    QWidget::keyPressEvent(event);
}

} // namespace holdband::ui
