// Two batches or two setups: two sentences, the table of measures, and how fair it is.
#pragma once

#include "core/review/lanes.h"
#include "core/review/side_by_side.h"

#include <QWidget>
#include <map>

class QBoxLayout;
class QComboBox;
class QLabel;

namespace holdband::ui {

class ComparisonChart;
class NotesCard;
class Session;
class TableCard;

class SideBySidePage : public QWidget {
    Q_OBJECT
public:
    explicit SideBySidePage(Session& session, QWidget* parent = nullptr);

    /// What can be chosen.
    void setLanes(const review::LanesReview& lanes);
    void compare(const QString& a, const QString& b);
    /// Compares what is chosen anew.
    void refresh();
    void clear();
    QString energySentence() const;
    QString temperatureSentence() const;
    const QString& subtitle() const { return m_subtitle; }

Q_SIGNALS:
    void comparisonShown();
    void failed(const QString& sentence);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeChoices();
    QWidget* makeHeadline();
    QWidget* makeBody();
    void fill(const review::SideBySide& comparison);
    void showProblem(const QString& words);
    void fillChoice(QComboBox* box, const QString& wanted);
    int setupIndex(const std::string& name) const;

    Session* m_session;
    QComboBox* m_a;
    QComboBox* m_b;
    QLabel* m_energy;
    QLabel* m_temperature;
    QBoxLayout* m_body = nullptr;
    QWidget* m_left = nullptr; ///< chart and notes; hidden where there are neither
    ComparisonChart* m_chart;
    TableCard* m_table;
    NotesCard* m_notes;
    QStringList m_batches;
    QStringList m_setups;
    std::map<QString, int> m_setupOf; ///< of batches and setups
    QString m_subtitle;
};

} // namespace holdband::ui
