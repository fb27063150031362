// The window with which the start-up time is compared: only a label.
#include <QApplication>
#include <QLabel>

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QLabel label(QStringLiteral("A window"));
    label.resize(1280, 860);
    label.show();
    return QApplication::exec();
}
