// The row in which the user chooses what to compare: A and B, the start, and which batches of the
// setups.
#pragma once

#include "core/results/comparison/side_by_side.h"
#include "core/results/overview/lanes.h"

#include <QWidget>
#include <map>

class QComboBox;
class QLabel;
class QMenu;
class QPushButton;

namespace holdband::ui {

class ComparisonChoice : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonChoice(QWidget* parent = nullptr);

    /// Fills the choices. Initially the first two setups are chosen.
    void setLanes(const results::LanesReview& lanes);
    void choose(const QString& a, const QString& b);
    void clear();
    /// The further choices of a comparison: stages to begin at, batches to include.
    void setOffered(const results::SideBySide& comparison);

    /// Batches that can be chosen, and setups if there are two.
    int offered() const;
    QString a() const;
    QString b() const;
    /// Without a decimal sign and a weighing.
    results::SideBySideRequest request() const;
    /// The index of a batch's or setup's colour among the setups.
    int setupIndex(const std::string& name) const;

    QComboBox* boxA() const { return m_a; }
    QComboBox* boxB() const { return m_b; }
    QComboBox* from() const { return m_from; }
    QPushButton* batches() const { return m_batches; }

Q_SIGNALS:
    void chosen();

private:
    void fill(QComboBox* box, const QString& wanted);
    void forgetOffered();
    void offerStages(const results::SideBySide& comparison);
    void offerBatches(const results::SideBySide& comparison);

    QComboBox* m_a;
    QComboBox* m_b;
    QLabel* m_fromLabel;
    QComboBox* m_from;
    QPushButton* m_batches;
    QMenu* m_ticks;
    QStringList m_batchNames;
    QStringList m_setupNames;
    std::map<QString, int> m_setupOf; ///< by batch or setup name
};

} // namespace holdband::ui
