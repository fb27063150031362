// A figure in large type with its caption below; it says how it came about on hover and on F1.
#pragma once

#include <QWidget>

class QLabel;

namespace holdband::ui {

class ExplainedLabel;

class FigureTile : public QWidget {
    Q_OBJECT
public:
    /// `scale`: of the figure's type, over the text's.
    explicit FigureTile(double scale, QWidget* parent = nullptr);

    void setFigure(const QString& value, const QString& caption, const QString& explanation,
                   bool warns);
    ExplainedLabel* value() const { return m_value; }
    QLabel* caption() const { return m_caption; }

private:
    ExplainedLabel* m_value;
    QLabel* m_caption;
};

} // namespace holdband::ui
