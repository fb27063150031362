// The lanes in a frame that grows with the setups up to a limit, and scrolls beyond it.
#pragma once

#include <QScrollArea>

namespace holdband::ui {

class LanesView;

class LanesArea : public QScrollArea {
    Q_OBJECT
public:
    explicit LanesArea(LanesView* lanes, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    LanesView* m_lanes;
};

} // namespace holdband::ui
