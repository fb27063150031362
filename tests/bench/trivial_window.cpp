// The peer of the start-up measure: a window with a label, closed as soon as it is shown.
#include <QApplication>
#include <QLabel>
#include <QTimer>

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QLabel label(QStringLiteral("A window"));
    label.resize(1280, 860);
    label.show();
    QTimer::singleShot(0, &application, &QApplication::quit);
    return QApplication::exec();
}
