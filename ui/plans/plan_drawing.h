// Draws a plan as steps over days, with its band shaded. The mouse drags a target up and down and a
// stage's end left and right; in the table next to it the keyboard does the same.
#pragma once

#include "ui/forms/unit_format.h"
#include "ui/plans/plan_layout.h"

#include <QWidget>

namespace holdband::ui {

class PlanDrawing : public QWidget {
    Q_OBJECT
public:
    explicit PlanDrawing(QWidget* parent = nullptr);

    void setPlan(std::vector<DrawnStage> stages, const UnitFormat& format);
    void setChosenRow(int row);
    const std::vector<DrawnStage>& stages() const { return m_stages; }
    PlanMap map() const;

    QSize sizeHint() const override { return {640, 190}; }
    QSize minimumSizeHint() const override { return {320, 150}; }

Q_SIGNALS:
    void targetDragged(int row, holdband::Temperature target);
    void lengthDragged(int row, holdband::Hours length);
    void rowChosen(int row);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    QRectF plot() const;
    void drag(QPointF place);
    void showHand(QPointF place);

    std::vector<DrawnStage> m_stages;
    UnitFormat m_format;
    int m_chosenRow = -1;
    std::optional<PlanHandle> m_held;
    PlanMap m_heldMap; ///< doesn't change during a drag
};

} // namespace holdband::ui
