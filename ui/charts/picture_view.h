// A picture on a card in the window. What it shows is told in words for those who hear the window.
#pragma once

#include "ui/charts/picture.h"

#include <QWidget>
#include <memory>

namespace holdband::ui {

class PictureView : public QWidget {
    Q_OBJECT
public:
    /// `name`: what is drawn. `framed`: with a card's frame of its own.
    explicit PictureView(const QString& name, QWidget* parent = nullptr, bool framed = true);

    /// Hidden without one. `words`: the gist of it.
    void setPicture(std::shared_ptr<const Picture> picture, const QString& words = {});
    const Picture* picture() const { return m_picture.get(); }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF inner() const;
    void takeHeight();

    std::shared_ptr<const Picture> m_picture;
    bool m_framed;
};

} // namespace holdband::ui
