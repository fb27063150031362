// Compares two batches or two setups: two sentences, charts, the table of measures, fairness notes,
// money and judgement. Shows results::SideBySide and computes nothing.
#pragma once

#include "core/results/comparison/comparison_cache.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/overview/lanes.h"
#include "ui/charts/pair_sides.h"

#include <QWidget>
#include <memory>
#include <mutex>

class QBoxLayout;
class QLabel;

namespace holdband::ui {

class BatchesCard;
class Card;
class ComparisonChoice;
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
    TableCard* table() const { return m_table; }
    NotesCard* notes() const { return m_notes; }
    BatchesCard* batches() const { return m_batches; }
    WeatherCard* weather() const { return m_weather; }
    MoneyCard* money() const { return m_money; }
    JudgementCard* judgement() const { return m_judgement; }
    /// The names chosen as A and as B.
    QStringList compared() const;

Q_SIGNALS:
    void comparisonShown();
    void failed(const QString& sentence);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeHeadline();
    QWidget* makeBody();
    QWidget* makeCharts();
    QWidget* makeFigures();
    void ask(std::optional<Weighing> weighing);
    void fill(const results::SideBySide& comparison);
    void showHeadline(const results::SideBySide& comparison);
    void fillCharts(const results::SideBySide& comparison, const PairSides& sides);
    void fillCards(const results::SideBySide* comparison, const PairSides& sides);
    void showProblem(const QString& words);
    void takeWeighing(const Weighing& weighing);
    PairSides sidesOf(const results::SideBySide& comparison) const;

    struct Shared; ///< cached by the comparisons on the workers

    Session* m_session;
    std::shared_ptr<Shared> m_shared;
    ComparisonChoice* m_choice;
    QLabel* m_energy;
    QLabel* m_temperature;
    QBoxLayout* m_body = nullptr;
    QWidget* m_charts = nullptr;
    QWidget* m_figures = nullptr;
    QBoxLayout* m_lower = nullptr; ///< money and judgement
    PictureView* m_energyPicture;
    PictureView* m_deviationPicture;
    PictureView* m_spreadPicture;
    TableCard* m_table;
    NotesCard* m_notes;
    BatchesCard* m_batches;
    WeatherCard* m_weather;
    MoneyCard* m_money;
    JudgementCard* m_judgement;
    QString m_subtitle;
    QString m_energyText;
    QString m_temperatureText;
};

} // namespace holdband::ui
