// Pages filled from top to bottom. What is put on them is kept as strokes and painted at the end,
// once it is known how many pages there are. Lengths are points (1/72 inch).
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <functional>
#include <vector>

namespace holdband::report {

class PageFlow {
public:
    using Stroke = std::function<void(QPainter&)>;

    /// `device`: where it will be painted; its resolution decides how text is measured.
    /// `page`: the part of it inside the margins.
    PageFlow(const QPaintDevice& device, QSizeF page);

    double width() const { return m_page.width(); }
    double height() const { return m_page.height(); }
    /// From here to the foot of the page.
    double left() const { return m_page.height() - m_y; }
    bool atTop() const { return m_y == 0.0; }
    double y() const { return m_y; }

    void newPage();
    /// A new page where less than `height` is left of this one.
    void need(double height);
    /// Goes down; at the top of a page there is no need.
    void space(double height);
    void advance(double height) { m_y += height; }
    /// Painted with the painter's unit a point and its origin the page's inner corner.
    void put(Stroke stroke) { m_pages.back().push_back(std::move(stroke)); }

    /// One after another from here on, going on overleaf.
    struct Words {
        QString text;
        QFont font;
        QColor colour;
        double indent = 0.0;
        double leading = 1.32; ///< from line to line, in sizes of the font
    };
    void flow(const Words& words);

    /// Words inside a box of a width: their lines, ready to be painted.
    struct Lines {
        std::vector<QString> text;
        double lineHeight = 0.0;

        double height() const { return lineHeight * static_cast<double>(text.size()); }
    };
    Lines wrapped(const QString& text, const QFont& font, double width, double leading) const;
    double widthOf(const QString& text, const QFont& font) const;
    /// Puts one line; `y` is its top, on this page.
    void putLine(const QString& text, const QFont& font, const QColor& colour, QRectF box,
                 Qt::Alignment alignment);

    int pageCount() const { return static_cast<int>(m_pages.size()); }
    const std::vector<Stroke>& page(int number) const
    {
        return m_pages[static_cast<std::size_t>(number)];
    }
    /// Device units in a point.
    double scale() const { return m_scale; }

private:
    const QPaintDevice& m_device;
    QSizeF m_page;
    double m_scale;
    double m_y = 0.0;
    std::vector<std::vector<Stroke>> m_pages{1};
};

} // namespace holdband::report
