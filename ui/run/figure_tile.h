// A figure in large type with its caption below; it says how it came about on hover and on F1.
#pragma once

#include "ui/theme/type_scale.h"

#include <QWidget>

class QLabel;

namespace holdband::ui {

class ExplainedLabel;

class FigureTile : public QWidget {
    Q_OBJECT
public:
    /// `size`: of the figure.
    explicit FigureTile(TypeSize size, QWidget* parent = nullptr);

    void setFigure(const QString& value, const QString& caption, const QString& explanation,
                   bool warns);
    ExplainedLabel* value() const { return m_value; }
    QLabel* caption() const { return m_caption; }

private:
    ExplainedLabel* m_value;
    QLabel* m_caption;
};

} // namespace holdband::ui
