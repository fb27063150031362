#include "ui/run/run_page.h"

#include "core/results/run/energy_texts.h"
#include "core/results/run/explain.h"
#include "core/store/records/batches.h"
#include "ui/charts/run_charts.h"
#include "ui/forms/save_change.h"
#include "ui/run/cause_dialog.h"
#include "ui/run/deviation_card.h"
#include "ui/run/energy_tables.h"
#include "ui/run/limits_card.h"
#include "ui/run/run_tables.h"
#include "ui/run/verdict_header.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/colours.h"
#include "ui/theme/empty_page.h"
#include "ui/words/words.h"

#include <QAction>
#include <QBoxLayout>
#include <QEvent>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr int rightWidth = 386;
constexpr int rightFigures = 48;
constexpr int leastChart = 60; ///< digits in the width of a chart beside the cards
constexpr int scrollBarRoom = 12;
constexpr int leastLines = 12; ///< of text in the height of the charts beside the cards

QScrollArea* scrolling(QWidget* inner, QWidget* parent)
{
    auto* area = new QScrollArea(parent);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

QStringList sentencesOf(const std::vector<std::string>& sentences)
{
    QStringList list;
    for (const std::string& text : sentences)
        list << capitalised(shown(text));
    return list;
}

} // namespace

RunPage::RunPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_verdict(new VerdictHeader(this)),
      m_charts(new RunCharts(this)), m_stages(new TableCard(Words::tr("Stages"), 0, this)),
      m_excursions(new TableCard(Words::tr("Excursions"), 3, this)),
      m_cause(new QPushButton(Words::tr("Give it a &cause…"), this)),
      m_energy(new TableCard(Words::tr("Energy and money"), 0, this)),
      m_limits(new LimitsCard(this)), m_deviation(new DeviationCard(this)),
      m_heat(new TableCard(Words::tr("Heat check of the crash"), 0, this)),
      m_gravity(new TableCard(Words::tr("Gravity"), 0, this)),
      m_journal(new NotesCard(Words::tr("Journal"), this, Card::Tone::plain)),
      m_findings(new NotesCard(Words::tr("Check these"), this, Card::Tone::plain)),
      m_cautions(new NotesCard(Words::tr("Safety"), this)),
      m_empty(new EmptyPage(
          EmptyExample::run,
          Words::tr("No batch is open: begin one, or click a bar in the lanes to open its run."),
          Words::tr("Begin a &batch…"), this))
{
    layOut();
    for (Card* card : std::initializer_list<Card*>{m_limits, m_deviation, m_heat, m_gravity,
                                                   m_journal, m_cautions})
        card->makeFoldable(true);
    for (TableCard* card : {m_excursions, m_heat, m_gravity})
        card->setHeaderShown(false);
    m_excursions->contents()->addWidget(m_cause, 0, Qt::AlignLeft);
    connect(m_cause, &QPushButton::clicked, this, &RunPage::giveCause);
    connect(m_charts, &RunCharts::spanMarked, this, &RunPage::offerForMarked);
    connect(m_empty->button(), &QPushButton::clicked, this, &RunPage::batchWanted);
    connect(m_limits, &LimitsCard::tried, this,
            [this](const auto& trial) { showTrial(trial.get()); });
    connect(m_limits, &LimitsCard::saveWanted, this, &RunPage::saveLimits);
    connect(m_excursions->table(), &QAbstractItemView::clicked, this,
            [this](const QModelIndex& index) { zoomToExcursion(index.row()); });
    connect(m_excursions->table(), &QAbstractItemView::activated, this,
            [this](const QModelIndex& index) { zoomToExcursion(index.row()); });
}

RunPage::~RunPage() = default;

void RunPage::layOut()
{
    auto* all = new QWidget;
    all->setObjectName(QStringLiteral("inner"));
    auto* column = new QVBoxLayout(all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    column->addWidget(m_verdict);
    m_chartArea = makeCharts();
    m_cardArea = makeCards();
    m_below = new QBoxLayout(QBoxLayout::LeftToRight);
    m_below->setSpacing(spacing::gap);
    m_below->addWidget(m_chartArea, 1);
    m_below->addWidget(m_cardArea);
    column->addLayout(m_below, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_area = scrolling(all, this);
    layout->addWidget(m_area);
    layout->addWidget(m_empty);
    m_area->hide();
    place();
}

/// On a small screen it scrolls, so that the panels are not squeezed.
QScrollArea* RunPage::makeCharts()
{
    m_charts->setObjectName(QStringLiteral("inner"));
    return scrolling(m_charts, this);
}

QScrollArea* RunPage::makeCards()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* layout = new QVBoxLayout(inner);
    layout->setContentsMargins(0, 0, 4, 0);
    layout->setSpacing(spacing::gap);
    for (QWidget* card :
         std::initializer_list<QWidget*>{m_stages, m_excursions, m_energy, m_limits, m_deviation,
                                         m_heat, m_gravity, m_findings, m_journal, m_cautions})
        layout->addWidget(card);
    layout->addStretch();
    inner->installEventFilter(this);
    return scrolling(inner, this);
}

/// Charts and cards beside each other, each scrolling by itself; where that leaves too little room,
/// below each other, and the whole page scrolls.
void RunPage::place()
{
    const int digit = fontMetrics().horizontalAdvance(u'0');
    // Fits the same number of figures per line as with the default text size.
    const int cards = std::max(rightWidth, rightFigures * digit);
    const bool beside = width() - cards >= leastChart * digit;
    m_verdict->setFixedHeight(m_verdict->heightFor(std::max(1, width() - scrollBarRoom)));
    m_below->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_cardArea->setMinimumWidth(beside ? cards : 0);
    m_cardArea->setMaximumWidth(beside ? cards : QWIDGETSIZE_MAX);
    m_cardArea->setMinimumHeight(beside ? 0 : m_cardArea->widget()->sizeHint().height());
    m_chartArea->setMinimumHeight(beside ? leastLines * fontMetrics().height()
                                         : m_charts->minimumSizeHint().height());
}

void RunPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    place();
}

/// A card was folded or filled.
bool RunPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::LayoutRequest)
        place();
    return QWidget::eventFilter(watched, event);
}

Result<RunPage::Prepared> RunPage::prepare(const store::LogbookFile& file, const std::string& batch)
{
    auto id = store::batchIdOf(file, batch);
    HOLDBAND_TRY(id);
    auto review = results::reviewRun(file, batch, decimalSign());
    if (!review)
        return failure(review.error());
    auto chart = std::make_shared<RunChart>(chartOf(*review));
    return Prepared{*id, std::make_shared<results::RunReview>(std::move(*review)),
                    std::move(chart)};
}

void RunPage::showBatch(const QString& batch)
{
    m_batch = batch;
    m_session->ask<Prepared>(
        this, [name = core(batch)](const store::LogbookFile& file) { return prepare(file, name); },
        [this, batch](Result<Prepared> prepared) {
            if (batch != m_batch)
                return;
            if (!prepared) {
                Q_EMIT failed(sentence(prepared.error()));
                return;
            }
            show(std::move(*prepared));
        });
}

void RunPage::showAgain()
{
    if (!m_review)
        return m_batch.isEmpty() ? void() : showBatch(m_batch);
    using Found = std::optional<Prepared>; // absent: the batch was removed
    m_session->ask<Found>(
        this,
        [id = m_id](const store::LogbookFile& file) -> Result<Found> {
            auto name = store::batchNameOf(file, id);
            HOLDBAND_TRY(name);
            if (!*name)
                return Found();
            auto prepared = prepare(file, **name);
            HOLDBAND_TRY(prepared);
            return Found(std::move(*prepared));
        },
        [this, batch = m_batch](Result<Found> found) {
            if (batch != m_batch) // the user chose another batch meanwhile
                return;
            if (!found) {
                Q_EMIT failed(sentence(found.error()));
                return;
            }
            if (!*found)
                return clear();
            m_batch = shown((*found)->review->batch().name);
            if (m_batch != batch)
                Q_EMIT renamed(batch, m_batch);
            show(std::move(**found));
        });
}

void RunPage::show(Prepared prepared)
{
    m_charts->setChart(std::make_unique<RunChart>(std::move(*prepared.chart)));
    m_id = prepared.id;
    m_review = prepared.review;
    fill(*m_review);
}

void RunPage::fill(const results::RunReview& review)
{
    m_empty->hide();
    m_area->show();
    m_subtitle = runSubtitle(review);
    m_verdict->setFigures(&review);
    m_verdict->setVerdict(review.figures.judged.asPlanned.verdict, shown(review.words.headline),
                          shown(review.words.detail));
    if (review.arrival)
        m_verdict->setArrival(
            shown(review.arrival->sentence),
            shown(results::explain(review, results::Figure::arrival, review.decimalSign)));
    else
        m_verdict->setArrival({}, {});
    fillCards(review);
    place();
    Q_EMIT reviewShown();
}

void RunPage::fillCards(const results::RunReview& review)
{
    m_stages->setWords(stageTable(review));
    m_stages->setVisible(!review.figures.judged.stages.empty());
    m_excursions->setWords(excursionTable(review));
    m_excursionSpans = excursionSpans(review);
    m_excursions->setSecondaryText(m_excursionSpans.empty() ? QString()
                                                            : Words::tr("click to show"));
    m_excursions->setRemark(excursionRemark(review));
    m_cause->setVisible(!m_excursionSpans.empty() && !m_session->readOnly());
    m_energy->setWords(energyTable(review));
    m_energy->setRemark(review.figures.energy.whole.any()
                            ? sentencesOf(results::energyRemarks(review)).join(QLatin1Char(' '))
                            : Words::tr("No meter was read twice while this batch ran."));
    m_limits->setReview(m_review, !m_session->readOnly());
    m_deviation->setReview(review);
    for (const auto& [card, words] :
         {std::pair{m_heat, heatTable(review)}, std::pair{m_gravity, gravityTable(review)}}) {
        card->setVisible(!words.rows.empty());
        card->setWords(words);
    }
    m_heat->setRemark(Words::tr("From volume and temperatures, within a few percent."));
    m_journal->setSentences(journalLines(review));
    m_journal->setSecondaryText(Words::counted("%n notes", "%n note", review.journal.size()));
    m_findings->setSentences(sentencesOf(review.findings));
    m_cautions->setSentences(sentencesOf(review.cautions));
}

void RunPage::clear()
{
    m_review.reset();
    m_batch.clear();
    m_subtitle.clear();
    m_charts->setChart(nullptr);
    m_area->hide();
    m_empty->button()->setEnabled(!m_session->readOnly());
    m_empty->show();
    m_verdict->setVerdict(analysis::Verdict::notEnoughData, Words::tr("No batch is open."),
                          Words::tr("Click a bar in the lanes to open its run."));
    m_verdict->setArrival({}, {});
    m_verdict->setFigures(nullptr);
    for (TableCard* card : {m_stages, m_excursions, m_energy})
        card->setWords({});
    for (QWidget* card : std::initializer_list<QWidget*>{m_limits, m_deviation, m_heat, m_gravity})
        card->hide();
    place();
    m_journal->setSentences({});
    m_excursionSpans.clear();
    m_findings->setSentences({});
    m_cautions->setSentences({});
}

/// The panels show the tried limits; the verdict on top remains the record's.
void RunPage::showTrial(const results::LimitsTrial* trial)
{
    if (m_review)
        m_charts->showJudged(trial ? trial->judged : m_review->figures.judged);
}

/// The sensor that read the beer at that time.
QString RunPage::beerSensorAt(Instant at) const
{
    std::string sensor = m_review->batch().beerSensor;
    for (const BeerUse& use : m_review->batch().beerUses) {
        if (use.from <= at)
            sensor = use.sensor;
    }
    return shown(sensor);
}

void RunPage::offerForMarked(const Span& span, const QPoint& at)
{
    if (!m_review)
        return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    QAction* leave = menu->addAction(Words::tr("&Leave out the readings here…"));
    leave->setEnabled(!m_session->readOnly());
    const Instant middle = span.start + (span.end - span.start) / 2;
    connect(leave, &QAction::triggered, this,
            [=, this] { Q_EMIT leaveOutWanted(beerSensorAt(middle), span); });
    connect(menu->addAction(Words::tr("&Zoom to it")), &QAction::triggered, this,
            [=, this] { m_charts->time().show(span, 0.0); });
    connect(menu, &QMenu::aboutToHide, this, [this] { m_charts->time().mark().clear(); });
    menu->popup(at);
    if (leave->isEnabled())
        menu->setActiveAction(leave);
}

/// For the selected excursion, else the first.
void RunPage::giveCause()
{
    const auto places = m_review ? excursionPlaces(*m_review) : std::vector<ExcursionPlace>();
    const auto row =
        static_cast<std::size_t>(std::max(m_excursions->table()->currentIndex().row(), 0));
    if (row >= places.size())
        return;
    (new CauseDialog(*m_session, m_review, places[row], this))->open();
}

void RunPage::saveLimits(const results::Limits& limits)
{
    const std::string batch = core(m_batch);
    saveChange(
        *m_session, this, results::limitsEntry(batch),
        [batch, limits](const store::Change& change) {
            return results::saveLimits(change, batch, limits);
        },
        [this](Done stored) {
            if (!stored)
                Q_EMIT failed(sentence(stored.error()));
        });
}

QString RunPage::beerSensor() const
{
    return m_review ? shown(m_review->beerSensor.name) : QString();
}

QString RunPage::headline() const
{
    return m_verdict->headline();
}

void RunPage::zoomToExcursion(int row)
{
    if (row >= 0 && static_cast<std::size_t>(row) < m_excursionSpans.size())
        m_charts->zoomTo(m_excursionSpans[static_cast<std::size_t>(row)]);
}

} // namespace holdband::ui
