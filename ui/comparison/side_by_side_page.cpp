#include "ui/comparison/side_by_side_page.h"

#include "core/store/records/weighing.h"
#include "core/text/name_suggestions.h"
#include "ui/charts/pair_deviation.h"
#include "ui/charts/pair_energy.h"
#include "ui/charts/pair_spread.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/batches_card.h"
#include "ui/comparison/comparison_choice.h"
#include "ui/comparison/judgement_card.h"
#include "ui/comparison/money_card.h"
#include "ui/comparison/side_tables.h"
#include "ui/comparison/weather_card.h"
#include "ui/forms/save_change.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace holdband::ui {

/// Used by one comparison at a time.
struct SideBySidePage::Shared {
    std::mutex mutex;
    results::ComparisonCache cache;
};

SideBySidePage::SideBySidePage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_shared(std::make_shared<Shared>()),
      m_choice(new ComparisonChoice(this)), m_energy(makeLabel({}, "title", this)),
      m_temperature(makeLabel({}, "muted", this)),
      m_energyPicture(new PictureView(Words::tr("Energy of both over the same time"), this)),
      m_deviationPicture(new PictureView(Words::tr("Deviation of both from target"), this)),
      m_spreadPicture(new PictureView(Words::tr("Time spent at each deviation"), this)),
      m_table(new TableCard({}, 5, this)),
      m_notes(new NotesCard(Words::tr("How fair is this?"), this)),
      m_batches(new BatchesCard(this)), m_weather(new WeatherCard(this)),
      m_money(new MoneyCard(this)), m_judgement(new JudgementCard(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(m_choice);
    layout->addWidget(makeHeadline());
    layout->addWidget(makeBody(), 1);
    m_table->table()->setAccessibleName(Words::tr("Measures"));
    connect(m_choice, &ComparisonChoice::chosen, this, &SideBySidePage::refresh);
    connect(m_weather, &WeatherCard::weighingWanted, this, &SideBySidePage::takeWeighing);
    connect(m_money, &MoneyCard::weighingWanted, this, &SideBySidePage::takeWeighing);
    connect(m_judgement, &JudgementCard::weighingWanted, this, &SideBySidePage::takeWeighing);
}

SideBySidePage::~SideBySidePage() = default;

QWidget* SideBySidePage::makeHeadline()
{
    auto* card = new Card({}, this);
    QFont large = m_energy->font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    m_energy->setFont(large);
    m_energy->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_temperature->setTextInteractionFlags(Qt::TextSelectableByMouse);
    card->contents()->addWidget(m_energy);
    card->contents()->addWidget(m_temperature);
    card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    return card;
}

QWidget* SideBySidePage::makeCharts()
{
    m_charts = new QWidget;
    auto* column = new QVBoxLayout(m_charts);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    for (QWidget* part : std::initializer_list<QWidget*>{m_energyPicture, m_deviationPicture,
                                                         m_spreadPicture, m_batches, m_weather})
        column->addWidget(part);
    column->addStretch();
    return m_charts;
}

QWidget* SideBySidePage::makeFigures()
{
    m_figures = new QWidget;
    auto* column = new QVBoxLayout(m_figures);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    column->addWidget(m_table);
    column->addWidget(m_notes);
    m_lower = new QBoxLayout(QBoxLayout::LeftToRight);
    m_lower->setSpacing(spacing::gap);
    m_lower->addWidget(m_money, 1, Qt::AlignTop);
    m_lower->addWidget(m_judgement, 1, Qt::AlignTop);
    column->addLayout(m_lower);
    column->addStretch();
    return m_figures;
}

QWidget* SideBySidePage::makeBody()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    m_body = new QBoxLayout(QBoxLayout::LeftToRight, inner);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(spacing::gap);
    m_body->addWidget(makeCharts(), 2);
    m_body->addWidget(makeFigures(), 5);
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

/// Side by side if there is space; else one below the other, the figures first.
void SideBySidePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const bool wide = width() >= 1340;
    m_body->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::BottomToTop);
    m_lower->setDirection(width() >= 760 ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void SideBySidePage::setLanes(const results::LanesReview& lanes)
{
    m_choice->setLanes(lanes);
    refresh();
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
    showHeadline(comparison);
    m_subtitle = Words::tr("A %1 · B %2").arg(shown(comparison.a), shown(comparison.b));
    m_choice->setOffered(comparison);
    m_table->setWords(measuresTable(comparison));
    m_table->setRemark(batchesThatCount(comparison));
    m_table->show();
    m_notes->setSentences(fairnessNotes(comparison));
    const PairSides sides = sidesOf(comparison);
    fillCharts(comparison, sides);
    fillCards(&comparison, sides);
    Q_EMIT comparisonShown();
}

void SideBySidePage::showHeadline(const results::SideBySide& comparison)
{
    m_energyText = shown(comparison.text.energySentence);
    m_temperatureText = shown(comparison.text.temperatureSentence);
    const QString first = shown(comparison.text.headline);
    const QString second = shown(comparison.text.belowHeadline);
    m_energy->setText(withNoBreakSpaces(first));
    m_energy->setAccessibleName(first);
    m_temperature->setText(withNoBreakSpaces(second));
    m_temperature->setAccessibleName(second);
}

void SideBySidePage::fillCharts(const results::SideBySide& comparison, const PairSides& sides)
{
    const auto show = [](PictureView* view, auto picture, const std::string& words) {
        view->setPicture(picture->empty() ? nullptr : std::move(picture), shown(words));
    };
    const TemperatureUnit unit = comparison.settings.temperatureUnit();
    show(m_energyPicture, std::make_shared<PairEnergyPicture>(comparison, sides),
         comparison.text.energySentence);
    show(m_deviationPicture,
         std::make_shared<PairDeviationPicture>(comparison.deviations, unit, sides),
         comparison.text.temperatureSentence);
    show(m_spreadPicture, std::make_shared<PairSpreadPicture>(comparison.deviations, unit, sides),
         comparison.text.temperatureSentence);
}

/// Null: nothing is compared.
void SideBySidePage::fillCards(const results::SideBySide* comparison, const PairSides& sides)
{
    const Zone zone = comparison ? Zone::named(comparison->settings.zone).value_or(Zone()) : Zone();
    const UnitFormat format = comparison ? unitFormatOf(comparison->settings, zone) : UnitFormat{};
    m_batches->setComparison(comparison, sides);
    m_weather->setComparison(comparison, format, sides);
    m_money->setComparison(comparison, format, sides);
    m_judgement->setComparison(comparison, sides, !m_session->readOnly());
}

void SideBySidePage::showProblem(const QString& words)
{
    m_energy->setText(words);
    m_energy->setAccessibleName(words);
    m_energyText = words;
    m_temperatureText.clear();
    m_temperature->clear();
    m_subtitle.clear();
    m_table->setWords({});
    m_table->hide();
    m_notes->setSentences({});
    for (PictureView* view : {m_energyPicture, m_deviationPicture, m_spreadPicture})
        view->setPicture(nullptr);
    fillCards(nullptr, {});
    Q_EMIT comparisonShown();
}

void SideBySidePage::clear()
{
    m_choice->clear();
    showProblem(Words::tr("Choose two batches or two setups."));
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
