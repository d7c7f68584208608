#include "app/desktop/circuit/tool.h"

#include "app/desktop/circuit/circuit_scene.h"

namespace pumpwright {

void Tool::deactivate() {
    m_host.scene().setOverlay({});
    m_host.scene().setHovered({});
    m_host.scene().endPreview();
}

bool Tool::keyPress(int, Qt::KeyboardModifiers) {
    return false;
}

} // namespace pumpwright
