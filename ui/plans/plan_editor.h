// Edits a plan by typing and dragging: the band for all stages, the drawing, and the table of
// stages.
#pragma once

#include "ui/plans/plan_rows.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace holdband::ui {

class EditTable;
class PlanDrawing;
class QuantityField;

class PlanEditor : public QWidget {
    Q_OBJECT
public:
    explicit PlanEditor(QWidget* parent = nullptr);

    void setFormat(const UnitFormat& format);
    /// Shows the stages with dates; absent: only with days.
    void setPitched(std::optional<Instant> pitched);
    void setPlan(const PlanValue& plan);

    /// The typed plan, checked. On a Problem its cell gets the focus and the sentence is shown
    /// below the table.
    Result<PlanValue> plan();
    /// Questions to ask before it is saved; empty while something is refused.
    QStringList questions() const;
    /// The sentence below the table.
    QString words() const;

    EditTable* table() const { return m_table; }
    PlanDrawing* drawing() const { return m_drawing; }
    QuantityField* band() const { return m_band; }
    /// "Save as a named plan…"
    QPushButton* nameButton() const { return m_name; }

Q_SIGNALS:
    void changed();
    void nameWanted();

private:
    void layOut();
    void connectParts();
    void showTyped();
    void showBeginnings(const Schedule& schedule, const std::vector<int>& rows);
    std::optional<TemperatureDifference> tolerance() const;
    Result<Schedule> typedSchedule() const;

    UnitFormat m_format;
    std::optional<Instant> m_pitched;
    Schedule m_origin;
    QuantityField* m_band;
    PlanDrawing* m_drawing;
    EditTable* m_table;
    QLabel* m_words;
    QPushButton* m_name;
};

} // namespace holdband::ui
