// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/sample_water.h"

#include <QDir>
#include <QFileInfo>

#include <array>

namespace window {

namespace {

/// All but the track of a fishing day, which belongs to looking back.
constexpr std::array names{"survey-days.csv",       "water.json",
                           "shoreline.geojson",     "survey-2026-09-05.nmea",
                           "survey-2026-09-12.gpx", "survey-2026-09-19.csv",
                           "weed-notes.csv",        "lead-line.csv",
                           "house-rules.json",      "log.csv"};

} // namespace

QStringList sampleFiles(const QString& program) {
    for (const char* place : {"../share/meremark/sample", "../../../sample-survey/files"}) {
        const QDir folder(QDir(program).filePath(QLatin1String(place)));
        QStringList files;
        for (const char* name : names) {
            const QString path = QDir::cleanPath(folder.filePath(QLatin1String(name)));
            if (QFileInfo(path).isFile()) {
                files.append(path);
            }
        }
        if (files.size() == static_cast<qsizetype>(names.size())) {
            return files;
        }
    }
    return {};
}

} // namespace window
