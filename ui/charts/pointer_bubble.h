// The dark box beside the crosshair. Lets the mouse through.
#pragma once

#include <QStringList>
#include <QWidget>

namespace holdband::ui {

class PointerBubble : public QWidget {
    Q_OBJECT
public:
    explicit PointerBubble(QWidget* parent);

    /// Shows the lines beside `point`, on the side where there is room inside `room`.
    void say(const QStringList& lines, QPoint point, QSize room);
    const QStringList& lines() const { return m_lines; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QStringList m_lines;
};

} // namespace holdband::ui
