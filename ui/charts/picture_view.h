// A picture on a card in the window, with a text for people who use a screen reader.
#pragma once

#include "ui/charts/picture.h"

#include <QWidget>
#include <memory>

namespace holdband::ui {

class PictureView : public QWidget {
    Q_OBJECT
public:
    /// `name`: the accessible name. `framed`: with its own card frame.
    explicit PictureView(const QString& name, QWidget* parent = nullptr, bool framed = true);

    /// Hidden without one. `words`: a summary of the picture.
    void setPicture(std::shared_ptr<const Picture> picture, const QString& words = {});
    /// The best height becomes the least: it takes more where a neighbour is higher.
    void fillHeight();
    const Picture* picture() const { return m_picture.get(); }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF inner() const;
    void updateHeight();

    std::shared_ptr<const Picture> m_picture;
    bool m_framed;
    bool m_fills = false;
};

} // namespace holdband::ui
