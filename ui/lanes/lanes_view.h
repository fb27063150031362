// The lanes: the map of the logbook across the top of the window.
#pragma once

#include "ui/charts/time_window.h"
#include "ui/lanes/lanes_layout.h"
#include "ui/theme/colours.h"

#include <QWidget>
#include <optional>

namespace holdband::ui {

class LanesView : public QWidget {
    Q_OBJECT
public:
    explicit LanesView(QWidget* parent = nullptr);

    void setReview(review::LanesReview review, const Zone& zone);
    void clear();
    /// The batches that the pages show: one, or two side by side.
    void setChosen(const QStringList& batches);
    const review::LanesReview& review() const { return m_review; }
    /// The middle of a batch's bar, for tests and for those who point at it.
    std::optional<QPoint> placeOf(const QString& batch) const;
    QString current() const;
    Span shownSpan() const { return m_window.shown(); }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void batchOpened(const QString& batch);
    /// Ctrl-click: to stand beside the one that is open.
    void secondChosen(const QString& batch);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    LanesMetrics metrics() const;
    void layOutAnew();
    Instant instantAt(double x) const;
    const review::LaneBar* barOf(std::size_t index) const;
    void step(Direction direction);
    void setCurrent(std::size_t index);
    bool zoomKey(int key);
    void paintLanes(QPainter& painter);
    void paintBar(QPainter& painter, std::size_t index);
    void paintRounds(QPainter& painter);
    void paintNow(QPainter& painter);
    void showHelp(QPoint at, QPoint global);

    review::LanesReview m_review;
    Zone m_zone;
    TimeWindow m_window;
    LanesLayout m_layout;
    QStringList m_chosen;
    std::size_t m_current = 0;
    bool m_dragging = false;
    bool m_dragged = false;
    double m_pressX = 0.0;
    double m_dragX = 0.0;
};

} // namespace holdband::ui
