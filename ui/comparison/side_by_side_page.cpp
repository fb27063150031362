#include "ui/comparison/side_by_side_page.h"

#include "core/store/records/weighing.h"
#include "ui/charts/batch_energies.h"
#include "ui/charts/pair_bars.h"
#include "ui/charts/pair_energy.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/answer_card.h"
#include "ui/comparison/batches_card.h"
#include "ui/comparison/comparison_choice.h"
#include "ui/comparison/details_panel.h"
#include "ui/comparison/glance_view.h"
#include "ui/comparison/judgement_card.h"
#include "ui/comparison/money_card.h"
#include "ui/comparison/weather_card.h"
#include "ui/forms/save_change.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/columns_layout.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace holdband::ui {

/// Used by one comparison at a time.
struct SideBySidePage::Shared {
    std::mutex mutex;
    results::ComparisonCache cache;
};

SideBySidePage::SideBySidePage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_shared(std::make_shared<Shared>()),
      m_choice(new ComparisonChoice(this)), m_answer(new AnswerCard(this)),
      m_glance(new GlanceView(this)),
      m_energyPicture(new PictureView(Words::tr("Energy since pitching"), this)),
      m_area(new QScrollArea(this)), m_weather(new WeatherCard(this)), m_money(new MoneyCard(this)),
      m_judgement(new JudgementCard(this)), m_details(new DetailsPanel(this)),
      m_empty(new EmptyPage(
          EmptyExample::sideBySide,
          Words::tr("Two batches or two setups are compared here as soon as there are two."),
          Words::tr("Begin a &batch…"), this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(m_choice);
    m_area->setWidget(makeBody());
    m_area->setWidgetResizable(true);
    m_area->setFocusPolicy(Qt::NoFocus);
    layout->addWidget(m_area, 1);
    layout->addWidget(m_empty, 1);
    m_empty->hide();
    connect(m_empty->button(), &QPushButton::clicked, this, &SideBySidePage::batchWanted);
    connect(m_choice, &ComparisonChoice::chosen, this, &SideBySidePage::refresh);
    connect(m_answer->details(), &QPushButton::toggled, this, &SideBySidePage::openDetails);
    connect(m_details, &DetailsPanel::folded, this,
            [this] { m_answer->setOpen(m_details->isOpen()); });
    connect(m_weather, &WeatherCard::weighingWanted, this, &SideBySidePage::takeWeighing);
    connect(m_money, &MoneyCard::weighingWanted, this, &SideBySidePage::takeWeighing);
    connect(m_judgement, &JudgementCard::weighingWanted, this, &SideBySidePage::takeWeighing);
}

SideBySidePage::~SideBySidePage() = default;

/// Cards side by side where there is space for them.
QWidget* SideBySidePage::makeBody()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    column->addWidget(m_answer);
    const int line = fontMetrics().height();
    auto* first = new ColumnsLayout(spacing::gap);
    first->addColumn(m_glance, 3, 26 * line);
    first->addColumn(m_energyPicture, 2, 21 * line);
    m_energyPicture->fillHeight();
    column->addLayout(first);
    auto* second = new ColumnsLayout(spacing::gap);
    for (QWidget* card : std::initializer_list<QWidget*>{m_weather, m_money, m_judgement})
        second->addColumn(card, 1, 21 * line);
    column->addLayout(second);
    column->addWidget(m_details);
    column->addStretch();
    return inner;
}

/// Unfolds the details and scrolls to them, or folds them.
void SideBySidePage::openDetails(bool open)
{
    m_details->setOpen(open);
    if (!open)
        return;
    m_area->widget()->layout()->activate();
    m_area->verticalScrollBar()->setValue(m_details->y());
}

void SideBySidePage::setLanes(const results::LanesReview& lanes)
{
    m_choice->setLanes(lanes);
    showEmpty();
    refresh();
}

/// Instead of choices that offer less than two.
void SideBySidePage::showEmpty()
{
    const bool none = m_choice->offered() < 2;
    for (QWidget* part : std::initializer_list<QWidget*>{m_choice, m_area})
        part->setHidden(none);
    m_empty->setVisible(none);
    m_empty->button()->setEnabled(!m_session->readOnly());
}

void SideBySidePage::compare(const QString& a, const QString& b)
{
    m_choice->choose(a, b);
}

void SideBySidePage::refresh()
{
    ask(std::nullopt);
}

void SideBySidePage::ask(std::optional<Weighing> weighing)
{
    results::SideBySideRequest request = m_choice->request();
    if (request.a.empty() || request.b.empty() || request.a == request.b)
        return showProblem(Words::tr("Choose two batches or two setups."));
    request.decimalSign = decimalSign();
    request.weighing = std::move(weighing);
    m_session->ask<results::SideBySide>(
        this,
        [request, shared = m_shared](const store::LogbookFile& file) {
            const std::lock_guard alone(shared->mutex);
            return results::reviewSideBySide(file, request, &shared->cache);
        },
        [this, a = request.a, b = request.b](Result<results::SideBySide> comparison) {
            if (a != core(m_choice->a()) || b != core(m_choice->b()))
                return;
            if (comparison)
                fill(*comparison);
            else
                showProblem(sentence(comparison.error()));
        });
}

/// Saved if the logbook is writable; else only tried.
void SideBySidePage::takeWeighing(const Weighing& weighing)
{
    if (m_session->readOnly())
        return ask(weighing);
    saveChange(
        *m_session, this, store::HistoryEntry{store::HistoryVerb::weighingChanged},
        [weighing](const store::Change& change) { return store::writeWeighing(change, weighing); },
        [this](Done stored) {
            if (!stored)
                Q_EMIT failed(sentence(stored.error()));
        });
}

PairSides SideBySidePage::sidesOf(const results::SideBySide& comparison) const
{
    PairSides sides{shown(comparison.a), shown(comparison.b)};
    sides.colourA = m_choice->setupIndex(comparison.a);
    sides.colourB = m_choice->setupIndex(comparison.b);
    if (sides.colourA == sides.colourB)
        ++sides.colourB;
    return sides;
}

void SideBySidePage::fill(const results::SideBySide& comparison)
{
    m_energyText = shown(comparison.text.energySentence);
    m_temperatureText = shown(comparison.text.temperatureSentence);
    m_answer->setComparison(comparison);
    m_subtitle = Words::tr("A %1 · B %2").arg(shown(comparison.a), shown(comparison.b));
    m_choice->setOffered(comparison);
    const PairSides sides = sidesOf(comparison);
    fillCharts(comparison, sides);
    fillCards(&comparison, sides);
    Q_EMIT comparisonShown();
}

/// Of two batches the energies at the same age with their ratio, of setups every batch's.
void SideBySidePage::fillCharts(const results::SideBySide& comparison, const PairSides& sides)
{
    auto glance = std::make_shared<PairBarsPicture>(comparison.glance, comparison.ofSetups, sides);
    m_glance->setPicture(glance->empty() ? nullptr : std::move(glance));
    const auto show = [&](auto picture) {
        m_energyPicture->setPicture(picture->empty() ? nullptr : std::move(picture),
                                    shown(comparison.text.energySentence));
    };
    if (comparison.ofSetups)
        show(std::make_shared<BatchEnergiesPicture>(comparison.energyA, comparison.energyB, sides));
    else
        show(std::make_shared<PairEnergyPicture>(comparison, sides));
}

/// Null: nothing is compared.
void SideBySidePage::fillCards(const results::SideBySide* comparison, const PairSides& sides)
{
    const Zone zone = comparison ? Zone::named(comparison->settings.zone).value_or(Zone()) : Zone();
    const UnitFormat format = comparison ? unitFormatOf(comparison->settings, zone) : UnitFormat{};
    m_details->setComparison(comparison, sides);
    m_weather->setComparison(comparison, format, sides);
    m_money->setComparison(comparison, format, sides);
    m_judgement->setComparison(comparison, sides, !m_session->readOnly());
}

void SideBySidePage::showProblem(const QString& words)
{
    m_answer->setProblem(words);
    m_energyText = words;
    m_temperatureText.clear();
    m_subtitle.clear();
    m_glance->setPicture(nullptr);
    m_energyPicture->setPicture(nullptr);
    fillCards(nullptr, {});
    Q_EMIT comparisonShown();
}

void SideBySidePage::clear()
{
    m_choice->clear();
    showProblem(Words::tr("Choose two batches or two setups."));
}

TableCard* SideBySidePage::table() const
{
    return m_details->table();
}

NotesCard* SideBySidePage::notes() const
{
    return m_details->notes();
}

BatchesCard* SideBySidePage::batches() const
{
    return m_details->batches();
}

QStringList SideBySidePage::compared() const
{
    return {m_choice->a(), m_choice->b()};
}

QString SideBySidePage::energySentence() const
{
    return m_energyText;
}

QString SideBySidePage::temperatureSentence() const
{
    return m_temperatureText;
}

} // namespace holdband::ui
