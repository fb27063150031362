// Compares two batches or two setups: one sentence, five pairs of bars, energy, weather, money and
// judgement; all measures and notes fold below. Shows results::SideBySide and computes nothing.
#pragma once

#include "core/results/comparison/comparison_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/overview/lanes.h"
#include "ui/charts/pair_sides.h"

#include <QWidget>
#include <memory>
#include <mutex>

class QScrollArea;

namespace holdband::ui {

class AnswerCard;
class BatchesCard;
class ComparisonChoice;
class DetailsPanel;
class EmptyPage;
class GlanceView;
class JudgementCard;
class MoneyCard;
class NotesCard;
class PictureView;
class Session;
class TableCard;
class WeatherCard;

class SideBySidePage : public QWidget {
    Q_OBJECT
public:
    explicit SideBySidePage(Session& session, QWidget* parent = nullptr);
    ~SideBySidePage() override;

    /// Fills the choices.
    void setLanes(const results::LanesReview& lanes);
    void compare(const QString& a, const QString& b);
    /// Compares the chosen sides again.
    void refresh();
    void clear();
    QString energySentence() const;
    QString temperatureSentence() const;
    const QString& subtitle() const { return m_subtitle; }
    ComparisonChoice* choice() const { return m_choice; }
    AnswerCard* answer() const { return m_answer; }
    GlanceView* glance() const { return m_glance; }
    PictureView* energy() const { return m_energyPicture; }
    DetailsPanel* details() const { return m_details; }
    TableCard* table() const;
    NotesCard* notes() const;
    BatchesCard* batches() const;
    WeatherCard* weather() const { return m_weather; }
    MoneyCard* money() const { return m_money; }
    JudgementCard* judgement() const { return m_judgement; }
    /// Shown while there are no two to compare.
    EmptyPage* empty() const { return m_empty; }
    /// The names chosen as A and as B.
    QStringList compared() const;

Q_SIGNALS:
    void comparisonShown();
    /// A batch to compare is to be begun.
    void batchWanted();
    void failed(const QString& sentence);

private:
    QWidget* makeBody();
    void openDetails(bool open);
    void ask(std::optional<Weighing> weighing);
    void fill(const results::SideBySide& comparison);
    void fillCharts(const results::SideBySide& comparison, const PairSides& sides);
    void fillCards(const results::SideBySide* comparison, const PairSides& sides);
    void showProblem(const QString& words);
    void showEmpty();
    void takeWeighing(const Weighing& weighing);
    PairSides sidesOf(const results::SideBySide& comparison) const;

    struct Shared; ///< cached by the comparisons on the workers

    Session* m_session;
    std::shared_ptr<Shared> m_shared;
    ComparisonChoice* m_choice;
    AnswerCard* m_answer;
    GlanceView* m_glance;
    PictureView* m_energyPicture;
    QScrollArea* m_area;
    WeatherCard* m_weather;
    MoneyCard* m_money;
    JudgementCard* m_judgement;
    DetailsPanel* m_details;
    EmptyPage* m_empty;
    QString m_subtitle;
    QString m_energyText;
    QString m_temperatureText;
};

} // namespace holdband::ui
