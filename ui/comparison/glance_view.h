// The five pairs of bars on a card. Up and down choose a pair; F1 and the pointer explain it.
#pragma once

#include "ui/charts/pair_bars.h"

#include <QWidget>
#include <memory>
#include <optional>

namespace holdband::ui {

class GlanceView : public QWidget {
    Q_OBJECT
public:
    explicit GlanceView(QWidget* parent = nullptr);

    /// Hidden without one.
    void setPicture(std::shared_ptr<const PairBarsPicture> picture);
    const PairBarsPicture* picture() const { return m_picture.get(); }
    /// The chosen pair.
    int current() const { return m_current; }
    /// How the pair's figures came about.
    QString explanation(int pair) const;
    /// The pair at a place of the widget; -1 if there is none.
    int pairAt(QPointF place) const;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    int count() const;
    QRectF inner() const;
    QRectF rowOf(int pair) const;
    void choose(int pair);
    void explain(int pair, QPoint at);
    void updateHeight();
    void describe();

    std::shared_ptr<const PairBarsPicture> m_picture;
    int m_current = 0;
};

} // namespace holdband::ui
