// The dark box next to the crosshair. Passes mouse events through.
#pragma once

#include <QStringList>
#include <QWidget>

namespace holdband::ui {

class PointerBubble : public QWidget {
    Q_OBJECT
public:
    explicit PointerBubble(QWidget* parent);

    /// Shows the lines next to `point`, on the side with enough space inside `room`.
    void say(const QStringList& lines, QPoint point, QSize room);
    const QStringList& lines() const { return m_lines; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QStringList m_lines;
};

} // namespace holdband::ui
