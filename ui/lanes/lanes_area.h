// The lanes in a frame that grows with the setups up to a limit; beyond it the rows scroll, while
// the rounds and the months remain visible below them.
#pragma once

#include <QWidget>

class QScrollBar;

namespace holdband::ui {

class LanesView;

class LanesArea : public QWidget {
    Q_OBJECT
public:
    explicit LanesArea(LanesView* lanes, QWidget* parent = nullptr);

    QScrollBar* bar() const { return m_bar; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    int highest() const; ///< pixels
    void followRows();

    LanesView* m_lanes;
    QScrollBar* m_bar;
};

} // namespace holdband::ui
