// What can be decided about a log: the meaning of each column, date order, unit, zone.
#pragma once

#include "ui/imports/decision.h"
#include "ui/imports/log_head.h"
#include "ui/theme/card.h"

#include <QStringList>
#include <utility>
#include <vector>

class QComboBox;
class QGridLayout;

namespace holdband::intake {
struct ImportOptions;
struct ImportReport;
} // namespace holdband::intake

namespace holdband::ui {

class ImportChoices : public Card {
    Q_OBJECT
public:
    explicit ImportChoices(QWidget* parent = nullptr);

    /// The columns of the file and the sensors and meters that they can be.
    void setColumns(const LogHead& head, const QStringList& targets);
    /// Puts what the dry run took by itself beside the columns.
    void showTaken(const intake::ImportReport& report);
    /// Leads to the control that decides it.
    void pointAt(Decision decision);
    void fillIn(intake::ImportOptions& options) const;
    void reset();
    QComboBox* dateOrder() const { return m_dateOrder; }
    QComboBox* unit() const { return m_unit; }
    QComboBox* zone() const { return m_zone; }
    QComboBox* column(const QString& header) const;

Q_SIGNALS:
    void changed();

private:
    void addRow(QGridLayout* grid, int row, const QString& label, QComboBox* box);

    QComboBox* m_dateOrder;
    QComboBox* m_unit;
    QComboBox* m_zone;
    QGridLayout* m_columns;
    std::vector<std::pair<QString, QComboBox*>> m_boxes; ///< header, choice
};

} // namespace holdband::ui
