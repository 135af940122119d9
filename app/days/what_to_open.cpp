// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/what_to_open.h"

#include "app/preferences/preferences.h"

#include <QFileDialog>

namespace days {

using preferences::Preferences;

QString askWhatToOpen(QWidget* parent, preferences::FileKind kind, const QString& title,
                      const QString& filter) {
    const QString path =
        QFileDialog::getOpenFileName(parent, title, Preferences::folderOf(kind), filter);
    if (!path.isEmpty()) {
        Preferences::keepFolderOf(kind, path);
    }
    return path;
}

QStringList askWhatAllToOpen(QWidget* parent, preferences::FileKind kind, const QString& title) {
    const QStringList paths =
        QFileDialog::getOpenFileNames(parent, title, Preferences::folderOf(kind));
    if (!paths.isEmpty()) {
        Preferences::keepFolderOf(kind, paths.front());
    }
    return paths;
}

} // namespace days
