#include "ui/forecast/next_batch_page.h"

#include "core/assign_result.h"
#include "core/results/forecast/setup_history.h"
#include "ui/charts/forecast_crash.h"
#include "ui/charts/forecast_energy.h"
#include "ui/charts/forecast_past.h"
#include "ui/charts/picture_view.h"
#include "ui/forecast/forecast_tables.h"
#include "ui/forecast/plan_card.h"
#include "ui/forecast/room_card.h"
#include "ui/forecast/setup_ticks.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/empty_page.h"
#include "ui/theme/theme.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <mutex>

namespace holdband::ui {

namespace {

constexpr int questionsWidth = 340;
constexpr int wideEnough = 900;  // questions beside the answers
constexpr int wideForTwo = 1120; // answers in two columns

QLabel* selectable(QLabel* label)
{
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

/// On the setup that uses less, else on the first one.
PlannedBatch plannedFrom(const results::NextBatch& review, Instant now)
{
    PlannedBatch planned;
    const bool second = review.less == analysis::Ahead::b;
    planned.setup = review.setups[second ? 1 : 0].setup.name;
    planned.volume = review.plan.volume;
    planned.originalGravity = review.plan.originalGravity;
    planned.planName = Words::tr("as forecast");
    planned.plan = {review.plan.schedule, review.plan.tolerance};
    for (const results::SetupForecast& setup : review.setups) {
        if (const auto forecast = results::batchForecast(review, setup, now))
            planned.forecasts.emplace(setup.setup.name, *forecast);
    }
    return planned;
}

} // namespace

struct NextBatchPage::Shared {
    std::mutex mutex;
    results::ForecastCache cache;
};

NextBatchPage::NextBatchPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_shared(std::make_shared<Shared>()),
      m_plan(new PlanCard(this)), m_room(new RoomCard(this)), m_setups(new SetupTicks(this)),
      m_pitch(new QPushButton(Words::tr("Pitch &this…"), this)),
      m_headline(selectable(makeLabel({}, "title", this))),
      m_also(selectable(makeLabel({}, "plain", this))),
      m_basis(selectable(makeLabel({}, "muted", this))),
      m_missing(new NotesCard(Words::tr("What is missing"), this, Card::Tone::plain)),
      m_energy(new PictureView(Words::tr("Energy of the next batch by stage"), this)),
      m_table(new TableCard(Words::tr("What it means"), 0, this)),
      m_past(
          new PictureView(Words::tr("Past batches as they would have been forecast"), this, false)),
      m_pastCard(new Card({}, this)), m_pastWords(selectable(makeLabel({}, "muted", this))),
      m_crash(new PictureView(Words::tr("Temperature of the crash"), this)),
      m_empty(new EmptyPage(EmptyExample::nextBatch,
                            Words::tr("A forecast needs a plan: save one, or begin a first batch "
                                      "(Ctrl+B)."),
                            Words::tr("Make a &plan…"), this))
{
    setRole(m_pitch, "main");
    m_pitch->setToolTip(Words::tr("Starts a batch with this plan and keeps the forecast with it."));
    m_table->table()->setAccessibleName(Words::tr("Forecast for each setup"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_area = makeBody();
    layout->addWidget(m_area);
    layout->addWidget(m_empty);
    m_empty->hide();
    connect(m_empty->button(), &QPushButton::clicked, this, &NextBatchPage::planWanted);
    connect(m_plan, &PlanCard::changed, this, &NextBatchPage::ask);
    connect(m_room, &RoomCard::changed, this, &NextBatchPage::ask);
    connect(m_setups, &SetupTicks::changed, this, &NextBatchPage::ask);
    connect(m_pitch, &QPushButton::clicked, this, [this] {
        if (m_review)
            Q_EMIT pitchWanted(plannedFrom(*m_review, m_session->now()));
    });
    clear();
}

NextBatchPage::~NextBatchPage() = default;

QWidget* NextBatchPage::makeBody()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    m_body = new QBoxLayout(QBoxLayout::LeftToRight, inner);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(spacing::gap);
    m_body->addWidget(makeQuestions());
    m_body->addWidget(makeAnswers(), 1);
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

QWidget* NextBatchPage::makeQuestions()
{
    m_questions = new QWidget;
    auto* column = new QVBoxLayout(m_questions);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    for (QWidget* card : std::initializer_list<QWidget*>{m_plan, m_room, m_setups}) {
        card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
        column->addWidget(card);
    }
    column->addWidget(m_pitch, 0, Qt::AlignRight);
    column->addStretch();
    return m_questions;
}

QWidget* NextBatchPage::makeHeadline()
{
    auto* card = new Card({}, this);
    m_headline->setFont(sized(m_headline->font(), TypeSize::heading));
    for (QLabel* label : {m_headline, m_also, m_basis})
        card->contents()->addWidget(label);
    card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    return card;
}

QWidget* NextBatchPage::makeAnswers()
{
    auto* answers = new QWidget;
    auto* column = new QVBoxLayout(answers);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    column->addWidget(makeHeadline());
    column->addWidget(m_missing);
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight);
    m_rows->setSpacing(spacing::gap);
    const auto addColumn = [this](std::initializer_list<QWidget*> parts, int stretch) {
        auto* part = new QVBoxLayout;
        part->setSpacing(spacing::gap);
        for (QWidget* widget : parts)
            part->addWidget(widget);
        part->addStretch();
        m_rows->addLayout(part, stretch);
    };
    m_pastCard->contents()->addWidget(m_past);
    m_pastCard->contents()->addWidget(m_pastWords);
    addColumn({m_energy, m_pastCard}, 3);
    addColumn({m_table, m_crash}, 2);
    column->addLayout(m_rows);
    column->addStretch();
    return answers;
}

/// A width for the usual size of text, for that of the window.
int NextBatchPage::scaled(int width) const
{
    constexpr double usualDigit = 8.0; // pixels
    const double digit = fontMetrics().horizontalAdvance(u'0');
    return static_cast<int>(width * std::max(1.0, digit / usualDigit));
}

void NextBatchPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const int questions = scaled(questionsWidth);
    const bool wide = width() >= scaled(wideEnough);
    m_body->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_questions->setMaximumWidth(wide ? questions : QWIDGETSIZE_MAX);
    m_questions->setMinimumWidth(wide ? questions : 0);
    m_rows->setDirection(width() >= scaled(wideForTwo) ? QBoxLayout::LeftToRight
                                                       : QBoxLayout::TopToBottom);
}

void NextBatchPage::refresh()
{
    m_session->ask<results::NextBatchOffer>(
        this, results::readNextBatchOffer, [this](Result<results::NextBatchOffer> offer) {
            if (!offer)
                return showProblem(sentence(offer.error()));
            const UnitFormat format = unitFormatOf(offer->settings, offer->zone);
            m_plan->setOffer(*offer, format);
            m_room->setOffer(*offer, format, m_session->now());
            m_setups->setOffer(*offer);
            showEmpty(!m_plan->hasPlan());
            ask();
        });
}

void NextBatchPage::showEmpty(bool none)
{
    m_area->setHidden(none);
    m_empty->setVisible(none);
    m_empty->button()->setEnabled(!m_session->readOnly());
}

Result<results::NextBatchRequest> NextBatchPage::request()
{
    results::NextBatchRequest request;
    request.setups = m_setups->ticked();
    HOLDBAND_TRY(assignResult(m_plan->plan(), request.plan));
    HOLDBAND_TRY(assignResult(m_room->room(), request.room));
    request.decimalSign = decimalSign();
    return request;
}

void NextBatchPage::ask()
{
    if (!m_plan->hasPlan())
        return showProblem(m_empty->sentence());
    if (m_setups->ticked().empty())
        return showProblem(Words::tr("Tick a setup."));
    auto asking = request();
    if (!asking)
        return showProblem(sentence(asking.error()));
    m_session->ask<results::NextBatch>(
        this,
        [request = *asking, shared = m_shared](const store::LogbookFile& file) {
            const std::lock_guard alone(shared->mutex);
            return results::reviewNextBatch(file, request, &shared->cache);
        },
        [this, asked = ++m_asked, request = *asking](Result<results::NextBatch> review) {
            if (asked != m_asked)
                return;
            m_shown = request;
            if (review)
                fill(*review);
            else
                showProblem(sentence(review.error()));
        });
}

void NextBatchPage::fill(const results::NextBatch& review)
{
    m_review = review;
    showHeadline(shown(review.text.headline), shown(review.text.also), shown(review.text.basis));
    m_room->showRoom(review.room, shown(review.text.room));
    m_missing->setSentences(missingSentences(review));
    m_table->setWords(forecastTable(review));
    m_table->setRemark(review.text.need.empty()
                           ? QString()
                           : Words::tr("The plan needs at most %1 of lift over 12 hours.")
                                 .arg(shown(review.text.need)));
    m_table->show();
    fillPictures(review);
    m_subtitle = shown(review.text.plan);
    m_pitch->setEnabled(!m_session->readOnly());
    Q_EMIT forecastShown();
}

void NextBatchPage::fillPictures(const results::NextBatch& review)
{
    using Text = results::SetupForecastText;
    const auto show = [&](PictureView* view, auto picture, const std::string& words,
                          std::string Text::*explained) {
        view->setPicture(picture->empty() ? nullptr : std::move(picture), shown(words));
        view->setToolTip(explanations(review, explained));
    };
    show(m_energy, std::make_shared<ForecastEnergyPicture>(review), review.text.headline,
         &Text::explainEnergy);
    show(m_past, std::make_shared<ForecastPastPicture>(review), core(pastSentences(review)),
         &Text::explainBacktest);
    show(m_crash, std::make_shared<ForecastCrashPicture>(review), review.text.also,
         &Text::explainCrash);
    m_pastWords->setText(withNoBreakSpaces(pastSentences(review)));
    m_pastWords->setToolTip(m_past->toolTip());
    m_pastCard->show();
}

void NextBatchPage::showHeadline(const QString& headline, const QString& also, const QString& basis)
{
    m_headline->setText(withNoBreakSpaces(headline));
    m_headline->setAccessibleName(headline);
    m_also->setText(withNoBreakSpaces(also));
    m_also->setVisible(!also.isEmpty());
    m_basis->setText(withNoBreakSpaces(basis));
    m_basis->setVisible(!basis.isEmpty());
}

void NextBatchPage::showProblem(const QString& words)
{
    ++m_asked;
    m_review.reset();
    m_shown.reset();
    showHeadline(words, {}, {});
    m_room->clearRoom();
    m_missing->setSentences({});
    m_table->setWords({});
    m_table->hide();
    for (PictureView* view : {m_energy, m_past, m_crash})
        view->setPicture(nullptr);
    m_pastCard->hide();
    m_pitch->setEnabled(false);
    m_subtitle.clear();
    Q_EMIT forecastShown();
}

void NextBatchPage::clear()
{
    showProblem(Words::tr("A forecast needs a plan and a setup."));
}

QString NextBatchPage::headline() const
{
    return m_headline->accessibleName();
}

} // namespace holdband::ui
