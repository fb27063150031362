// The page of one batch: the verdict, the three panels, and beside them stages, excursions, energy,
// journal and cautions.
#pragma once

#include "core/results/run/limits_trial.h"
#include "core/results/run/run_review.h"
#include "core/store/records/ids.h"

#include <QPoint>
#include <QWidget>
#include <memory>

class QBoxLayout;
class QPushButton;
class QScrollArea;

namespace holdband::ui {

class DeviationCard;
class EmptyPage;
class LimitsCard;
class NotesCard;
struct RunChart;
class RunCharts;
class Session;
class TableCard;
class VerdictHeader;

class RunPage : public QWidget {
    Q_OBJECT
public:
    explicit RunPage(Session& session, QWidget* parent = nullptr);
    ~RunPage() override;

    /// Fetches the batch's review and shows it when it arrives.
    void showBatch(const QString& batch);
    /// Fetches the shown batch again after a change, also if it was renamed; clears the page if it
    /// was removed.
    void showAgain();
    void clear();
    const QString& batch() const { return m_batch; }
    /// The last sensor of the shown batch's beer; empty if no batch is shown.
    QString beerSensor() const;
    /// The text beside the row of pages.
    const QString& subtitle() const { return m_subtitle; }
    QString headline() const;
    VerdictHeader* verdict() const { return m_verdict; }
    RunCharts* charts() const { return m_charts; }
    TableCard* stages() const { return m_stages; }
    TableCard* excursions() const { return m_excursions; }
    QPushButton* causeButton() const { return m_cause; }
    TableCard* energy() const { return m_energy; }
    LimitsCard* limits() const { return m_limits; }
    DeviationCard* deviation() const { return m_deviation; }
    /// Shown while no batch is open.
    EmptyPage* empty() const { return m_empty; }

Q_SIGNALS:
    void reviewShown();
    /// A batch is to be begun.
    void batchWanted();
    /// The shown batch was renamed.
    void renamed(const QString& before, const QString& now);
    void failed(const QString& sentence);
    /// The readings of the sensor in the span are to be left out.
    void leaveOutWanted(const QString& sensor, const Span& span);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// The review and the chart data made from it, both computed on the worker.
    struct Prepared {
        store::BatchId id;
        std::shared_ptr<const results::RunReview> review;
        std::shared_ptr<RunChart> chart;
    };

    static Result<Prepared> prepare(const store::LogbookFile& file, const std::string& batch);
    void show(Prepared prepared);
    QScrollArea* makeCharts();
    QScrollArea* makeCards();
    void layOut();
    void place();
    void fill(const results::RunReview& review);
    void fillCards(const results::RunReview& review);
    void zoomToExcursion(int row);
    void offerForMarked(const Span& span, const QPoint& at);
    QString beerSensorAt(Instant at) const;
    void showTrial(const results::LimitsTrial* trial);
    void giveCause();
    void saveLimits(const results::Limits& limits);

    Session* m_session;
    std::shared_ptr<const results::RunReview> m_review;
    store::BatchId m_id; ///< of the review's batch
    QString m_batch;
    QString m_subtitle;
    std::vector<Span> m_excursionSpans;
    VerdictHeader* m_verdict;
    QBoxLayout* m_below = nullptr;      ///< charts and cards, beside or below each other
    QScrollArea* m_chartArea = nullptr; ///< scrolls by itself only beside the cards
    QScrollArea* m_cardArea = nullptr;
    RunCharts* m_charts;
    TableCard* m_stages;
    TableCard* m_excursions;
    QPushButton* m_cause;
    TableCard* m_energy;
    LimitsCard* m_limits;
    DeviationCard* m_deviation;
    TableCard* m_heat;
    TableCard* m_gravity;
    NotesCard* m_journal;
    NotesCard* m_findings;
    NotesCard* m_cautions;
    EmptyPage* m_empty;
    QWidget* m_area = nullptr; ///< everything of a batch
};

} // namespace holdband::ui
