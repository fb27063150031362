#include "ui/report/render/svg_renderer.h"

#include "ui/report/compose/plain_text.h"

#include <QBuffer>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <cmath>

namespace holdband::report {

namespace {

/// Written by us, because the generator does not escape title and description and gives the size in
/// millimetres.
QByteArray opening(QSizeF size, const SvgWords& words)
{
    const QSize shown = words.shown.isEmpty() ? size.toSize() : words.shown;
    const QString text =
        QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\" "
                       "width=\"%5\" height=\"%6\" role=\"img\" aria-label=\"%3. %4\">\n"
                       "<title>%3</title>\n<desc>%4</desc>\n")
            .arg(QString::number(std::lround(size.width())),
                 QString::number(std::lround(size.height())), calm(words.title).toHtmlEscaped(),
                 calm(words.description).toHtmlEscaped(), QString::number(shown.width()),
                 QString::number(shown.height()));
    return text.toUtf8();
}

} // namespace

QByteArray svgElement(const std::function<void(QPainter&)>& paint, QSizeF size,
                      const SvgWords& words)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF({}, size));
    {
        QPainter painter(&generator);
        paint(painter);
    }
    QByteArray all = buffer.data();
    const qsizetype tag = all.indexOf("<svg");
    all = all.mid(all.indexOf('>', tag) + 1);
    static const QRegularExpression family(QStringLiteral("font-family=\"[^\"]*\""));
    QString body = QString::fromUtf8(all);
    body.replace(family, QStringLiteral("font-family=\"sans-serif\""));
    // Every change of the painter's state opens a group, also when nothing is drawn in it.
    static const QRegularExpression emptyGroup(QStringLiteral("<g [^>]*>\\s*</g>\\s*"));
    body.remove(emptyGroup);
    return opening(size, words) + body.toUtf8().trimmed() + '\n';
}

QByteArray svgFile(const QByteArray& element)
{
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element;
}

} // namespace holdband::report
