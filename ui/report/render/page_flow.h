// Fills pages from top to bottom. Drawing commands are stored and painted at the end, when the
// number of pages is known. Lengths are points (1/72 inch).
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

    /// `device`: the device for painting; its resolution determines how text is measured. `page`:
    /// the area inside the margins.
    PageFlow(const QPaintDevice& device, QSizeF page);

    double width() const { return m_page.width(); }
    double height() const { return m_page.height(); }
    /// The space from here to the bottom of the page.
    double left() const { return m_page.height() - m_y; }
    bool atTop() const { return m_y == 0.0; }
    double y() const { return m_y; }

    void newPage();
    /// Begins a new page if less than `height` is left on this one.
    void need(double height);
    /// Adds vertical space, except at the top of a page.
    void space(double height);
    void advance(double height) { m_y += height; }
    /// The stroke is painted in points, with its origin at the corner of the page inside the
    /// margins.
    void put(Stroke stroke) { m_pages.back().push_back(std::move(stroke)); }

    /// Texts put one after another from here, continuing on the next page.
    struct Words {
        QString text;
        QFont font;
        QColor colour;
        double indent = 0.0;
        double leading = 1.32; ///< line height, in sizes of the font
    };
    void flow(const Words& words);

    /// Text wrapped to a width: its lines, ready to be painted.
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
    /// Device units per point.
    double scale() const { return m_scale; }

private:
    const QPaintDevice& m_device;
    QSizeF m_page;
    double m_scale;
    double m_y = 0.0;
    std::vector<std::vector<Stroke>> m_pages{1};
};

} // namespace holdband::report
