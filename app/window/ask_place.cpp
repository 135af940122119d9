// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/ask_place.h"

#include "app/preferences/preferences.h"
#include "app/wording/tongue.h"

#include <QFileDialog>

namespace window {

QString askPlace(QWidget* parent, const QString& title) {
    using preferences::FileKind;
    using preferences::Preferences;
    QString path =
        QFileDialog::getSaveFileName(parent, title, Preferences::folderOf(FileKind::water),
                                     wording::Tongue::tr("Water files (*.gpkg)"));
    if (path.isEmpty()) {
        return path;
    }
    Preferences::keepFolderOf(FileKind::water, path);
    return path.endsWith(QLatin1String(".gpkg")) ? path : path + QStringLiteral(".gpkg");
}

} // namespace window
