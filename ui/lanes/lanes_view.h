// The lanes: the overview of the logbook across the top of the window. lanes_layout.h computes the
// positions; mouse and keys are in lanes_input.cpp, drawing in lanes_painting.cpp.
#pragma once

#include "ui/charts/time_window.h"
#include "ui/lanes/lanes_layout.h"
#include "ui/theme/colours.h"

#include <QWidget>
#include <memory>
#include <optional>

class QMenu;

namespace holdband::ui {

class LanesView : public QWidget {
    Q_OBJECT
public:
    explicit LanesView(QWidget* parent = nullptr);

    /// The shown part of the time does not change, unless all was shown.
    void setReview(results::LanesReview review, const Zone& zone);
    /// Moves the line of the current time, and extends open bars.
    void setNow(Instant now);
    void clear();
    /// The batches that the pages show: one, or the two compared.
    void setChosen(const QStringList& batches);
    const QStringList& chosen() const { return m_chosen; }
    /// Whether the menu of a bar offers to change it.
    void setMayChange(bool may) { m_mayChange = may; }

    const results::LanesReview& review() const { return m_review; }
    const LanesLayout& placed() const { return m_layout; }
    /// The middle of a batch's bar, for tests and for pointing at it.
    std::optional<QPoint> placeOf(const QString& batch) const;
    QString current() const;
    Span shownSpan() const { return m_window.shown(); }
    /// The menu of a batch's bar. Never null.
    std::unique_ptr<QMenu> menuFor(const QString& batch);

    /// Bars in the order for assistive technology: lane by lane, in order of pitching.
    std::size_t barCount() const { return m_layout.bars.size(); }
    std::size_t currentIndex() const { return m_current; }
    /// Null past the last one.
    const results::LaneBar* barOf(std::size_t index) const;
    QString setupOf(std::size_t index) const;
    /// Makes the bar the current one and scrolls to it.
    void setCurrent(std::size_t index);
    void open(std::size_t index);
    /// The position of "Show all" while a part of the time is shown.
    QRectF showAllBox() const;

    /// For the scroll bar: the height of all rows, and the part that is shown.
    double rowsHeight() const { return m_layout.rowsHeight; }
    double shownRowsHeight() const { return m_layout.plot.height(); }
    double scrolled() const { return m_scrolled; }
    void scrollTo(double pixels);
    /// The height of everything but the rows.
    double heightWithoutRows() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void batchOpened(const QString& batch);
    /// Ctrl-click: compare with the batch that is open.
    void secondChosen(const QString& batch);
    void changeWanted(const QString& batch);
    void noteWanted(const QString& batch);
    /// The number of rows changed, or they were scrolled.
    void rowsChanged();

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
    void focusOutEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool event(QEvent* event) override;

private:
    LanesMetrics metrics() const;
    void updateLayout();
    void showOnly(Span span);
    void showAllOfTime();
    std::optional<std::size_t> indexOf(const QString& batch) const;
    Instant instantAt(double x) const;
    void bringIntoView(std::size_t index);
    void scrollToRow(std::size_t index);
    void step(Direction direction);
    void act(std::size_t index, bool second);
    bool zoomKey(int key);
    bool stepKey(int key);
    void press(QPointF at, bool second);
    QString helpAt(QPointF at) const;

    void paintLanes(QPainter& painter);
    void paintTimeLines(QPainter& painter);
    void paintBars(QPainter& painter);
    void paintBar(QPainter& painter, std::size_t index);
    void paintBarWords(QPainter& painter, const QRectF& seen, const results::LaneBar& bar);
    void paintGroup(QPainter& painter, const PlacedGroup& group);
    void paintFocus(QPainter& painter);
    void paintRounds(QPainter& painter);
    void paintLabels(QPainter& painter);
    void paintWhere(QPainter& painter);
    void paintNow(QPainter& painter);
    void paintNothing(QPainter& painter);

    results::LanesReview m_review;
    Zone m_zone;
    TimeWindow m_window;
    LanesLayout m_layout;
    QStringList m_chosen;
    std::size_t m_current = 0;
    double m_scrolled = 0.0;
    bool m_mayChange = true;
    bool m_dragging = false;
    bool m_dragged = false;
    double m_pressX = 0.0;
    double m_dragX = 0.0;
};

} // namespace holdband::ui
