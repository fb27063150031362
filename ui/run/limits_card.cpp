#include "ui/run/limits_card.h"

#include "core/text/quantities.h"
#include "ui/theme/theme.h"
#include "ui/words/band_times_text.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QFutureWatcher>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QSpinBox>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double fahrenheitStep = 1.0 / 9.0; ///< K; 0.2 °F, from 1 to 5 °F
constexpr double celsiusStep = 0.1;          ///< K; from 0.5 to 2.8 °C
constexpr int mostIgnoredMinutes = 24 * 60;
constexpr int mostGapMinutes = 7 * 24 * 60;

QSpinBox* makeMinutes(const QString& name, int most, QWidget* parent)
{
    auto* box = new QSpinBox(parent);
    box->setRange(0, most);
    box->setSingleStep(5);
    box->setSuffix(QStringLiteral(" min"));
    box->setAccessibleName(name);
    box->setKeyboardTracking(false);
    box->findChild<QLineEdit*>()->setAccessibleName(name);
    return box;
}

int minutesOf(Milliseconds length)
{
    return static_cast<int>(std::chrono::round<std::chrono::minutes>(length).count());
}

/// A box shows whole minutes; if the user didn't change it, the exact value is used.
Milliseconds valueOf(const QSpinBox& box, Milliseconds own)
{
    return box.value() == minutesOf(own) ? own : Milliseconds{std::chrono::minutes{box.value()}};
}

} // namespace

LimitsCard::LimitsCard(QWidget* parent)
    : Card(Words::tr("Try other limits"), parent), m_tolerance(new QSlider(Qt::Horizontal, this)),
      m_toleranceText(new QLabel(this)),
      m_ignoreShorterThan(makeMinutes(Words::tr("Ignore shorter than"), mostIgnoredMinutes, this)),
      m_gap(makeMinutes(Words::tr("Gap limit"), mostGapMinutes, this)),
      m_dwell(makeMinutes(Words::tr("Settled after"), mostIgnoredMinutes, this)),
      m_return(makeMinutes(Words::tr("Excursion ends after"), mostIgnoredMinutes, this)),
      m_verdict(makeLabel({}, "plain", this)), m_detail(makeLabel({}, "muted", this)),
      m_save(new QPushButton(Words::tr("&Save for this batch"), this)),
      m_back(new QPushButton(Words::tr("Back to its &own"), this))
{
    setSecondaryText(Words::tr("the record does not change"));
    m_tolerance->setPageStep(5);
    m_tolerance->setAccessibleName(Words::tr("Hold band, ±"));
    m_ignoreShorterThan->setToolTip(Words::tr("Excursions shorter than this do not count."));
    m_gap->setSpecialValueText(Words::tr("automatic"));
    m_gap->setToolTip(
        Words::tr("Readings farther apart than this leave a gap without data. Automatic: three "
                  "times the median interval between readings, at most 2 h."));
    m_dwell->setToolTip(dwellTip());
    m_return->setToolTip(returnTip());
    layOut();
    connect(m_tolerance, &QSlider::valueChanged, this, [this] {
        m_toleranceMoved = m_toleranceMoved || !m_filling;
        showTolerance();
        changed();
    });
    for (QSpinBox* box : {m_ignoreShorterThan, m_gap, m_dwell, m_return})
        connect(box, &QSpinBox::valueChanged, this, &LimitsCard::changed);
    connect(m_back, &QPushButton::clicked, this, &LimitsCard::showOwn);
    connect(m_save, &QPushButton::clicked, this, [this] { Q_EMIT saveWanted(limits()); });
}

void LimitsCard::layOut()
{
    auto* form = new QFormLayout;
    auto* band = new QHBoxLayout;
    band->addWidget(m_tolerance, 1);
    band->addWidget(m_toleranceText);
    m_toleranceText->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("± 2.78 °C")) +
                                     4);
    auto* bandLabel = new QLabel(Words::tr("Hold ban&d"), this);
    bandLabel->setBuddy(m_tolerance);
    form->addRow(bandLabel, band);
    form->addRow(Words::tr("I&gnore shorter than"), m_ignoreShorterThan);
    form->addRow(Words::tr("Gap l&imit"), m_gap);
    form->addRow(Words::tr("Se&ttled after"), m_dwell);
    form->addRow(Words::tr("E&xcursion ends after"), m_return);
    contents()->addLayout(form);
    contents()->addWidget(m_verdict);
    contents()->addWidget(m_detail);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_back);
    buttons->addWidget(m_save);
    buttons->addStretch();
    contents()->addLayout(buttons);
}

void LimitsCard::setReview(std::shared_ptr<const results::RunReview> review, bool writable)
{
    m_review = std::move(review);
    setVisible(m_review && !m_review->figures.judged.stages.empty());
    m_save->setVisible(writable);
    if (!m_review)
        return;
    const QSignalBlocker quiet(m_tolerance);
    const bool celsius = m_review->settings.temperatureUnit() == TemperatureUnit::celsius;
    m_kelvinsAStep = celsius ? celsiusStep : fahrenheitStep;
    m_tolerance->setRange(5, celsius ? 28 : 25);
    showOwn();
}

void LimitsCard::showOwn()
{
    const results::Limits own = results::limitsOf(*m_review);
    double widest = 0.0;
    for (const analysis::PlacedStage& stage : m_review->figures.judged.stages)
        widest = std::max(widest, stage.tolerance.kelvins());
    m_filling = true;
    const double kelvins = own.tolerance ? own.tolerance->kelvins() : widest;
    m_tolerance->setValue(static_cast<int>(std::lround(kelvins / m_kelvinsAStep)));
    m_ignoreShorterThan->setValue(minutesOf(own.ignoreShorterThan));
    m_gap->setValue(own.gapLimit ? minutesOf(*own.gapLimit) : 0);
    m_dwell->setValue(minutesOf(own.bandTimes.dwell));
    m_return->setValue(minutesOf(own.bandTimes.returnTime));
    m_filling = false;
    m_toleranceMoved = false;
    showTolerance();
    changed();
}

double LimitsCard::toleranceKelvins() const
{
    return m_tolerance->value() * m_kelvinsAStep;
}

results::Limits LimitsCard::limits() const
{
    const results::Limits own = results::limitsOf(*m_review);
    results::Limits limits;
    limits.tolerance = m_toleranceMoved
                           ? std::optional(TemperatureDifference::kelvins(toleranceKelvins()))
                           : own.tolerance;
    limits.ignoreShorterThan = valueOf(*m_ignoreShorterThan, own.ignoreShorterThan);
    limits.bandTimes = {valueOf(*m_dwell, own.bandTimes.dwell),
                        valueOf(*m_return, own.bandTimes.returnTime)};
    if (own.gapLimit && m_gap->value() == minutesOf(*own.gapLimit))
        limits.gapLimit = own.gapLimit;
    else if (m_gap->value() > 0)
        limits.gapLimit = std::chrono::minutes{m_gap->value()};
    return limits;
}

void LimitsCard::showTolerance()
{
    if (!m_review)
        return;
    const auto tolerance = TemperatureDifference::kelvins(toleranceKelvins());
    const QString words =
        QStringLiteral("± ") +
        shown(differenceText(tolerance, m_review->settings.temperatureUnit(), 1, decimalSign()));
    m_toleranceText->setText(words);
    m_tolerance->setAccessibleDescription(words);
}

void LimitsCard::changed()
{
    if (m_filling || !m_review)
        return;
    const bool own = limits() == results::limitsOf(*m_review);
    for (QWidget* part : std::initializer_list<QWidget*>{m_verdict, m_detail, m_back})
        part->setVisible(!own);
    m_save->setEnabled(!own);
    if (own) {
        m_verdict->clear();
        Q_EMIT tried(nullptr);
    } else if (m_running) {
        m_again = true;
    } else {
        start();
    }
}

void LimitsCard::start()
{
    using Trial = std::shared_ptr<const results::LimitsTrial>;
    m_running = true;
    m_again = false;
    auto* watcher = new QFutureWatcher<Trial>(this);
    connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher, of = m_review] {
        watcher->deleteLater();
        m_running = false;
        if (m_again || of != m_review)
            changed();
        else
            take(watcher->result());
    });
    watcher->setFuture(QtConcurrent::run([review = m_review, wanted = limits()]() -> Trial {
        return std::make_shared<const results::LimitsTrial>(results::tryLimits(*review, wanted));
    }));
}

void LimitsCard::take(std::shared_ptr<const results::LimitsTrial> trial)
{
    if (limits() == results::limitsOf(*m_review))
        return;
    m_verdict->setText(Words::tr("Then: %1").arg(shown(trial->words.headline)));
    m_detail->setText(shown(trial->words.detail));
    Q_EMIT tried(trial);
}

QString LimitsCard::verdict() const
{
    return m_verdict->text();
}

} // namespace holdband::ui
