// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "app/wording/tongue.h"

#include <QApplication>
#include <QCommandLineParser>

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Meremark"));
    QApplication::setApplicationVersion(QStringLiteral(MEREMARK_VERSION));
    QApplication::setOrganizationName(QStringLiteral("Meremark"));

    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Charts, marks and log of one stillwater, offline."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("WATER.gpkg"), QStringLiteral("Water file to open"),
                                 QStringLiteral("[WATER.gpkg]"));
    parser.process(app);

    const preferences::Preferences kept;
    wording::Tongue::speak(wording::Tongue::best(preferences::Preferences::language(),
                                                 QLocale::system().uiLanguages()));
    window::applyStyle(app, kept.theme(), kept.typeScale());
    window::MainWindow main;
    main.show();
    if (!parser.positionalArguments().isEmpty()) {
        main.openWater(parser.positionalArguments().front());
    }
    return QApplication::exec();
}
