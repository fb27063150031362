// A plan to type and to drag: the band that holds everywhere, the drawing, and the table of stages.
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

    void setManner(const UnitFormat& manner);
    /// Gives the stages their dates; absent: days only.
    void setPitched(std::optional<Instant> pitched);
    void setPlan(const PlanValue& plan);

    /// What is typed, checked. On a Problem the focus goes to its cell and the sentence stands
    /// beneath the table.
    Result<PlanValue> plan();
    /// To ask before it is kept; empty while something is refused.
    QStringList questions() const;
    /// The sentence beneath the table.
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

    UnitFormat m_manner;
    std::optional<Instant> m_pitched;
    Schedule m_origin;
    QuantityField* m_band;
    PlanDrawing* m_drawing;
    EditTable* m_table;
    QLabel* m_words;
    QPushButton* m_name;
};

} // namespace holdband::ui
