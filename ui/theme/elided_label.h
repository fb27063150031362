// A label that elides text that does not fit, with the full text in its tooltip.
#pragma once

#include <QLabel>

namespace holdband::ui {

class ElidedLabel : public QLabel {
    Q_OBJECT
public:
    explicit ElidedLabel(const QString& text = {}, QWidget* parent = nullptr);

    void setWholeText(const QString& text);
    const QString& wholeText() const { return m_whole; }
    QSize minimumSizeHint() const override;
    QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void shorten();
    QString m_whole;
};

} // namespace holdband::ui
