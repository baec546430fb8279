package org.thresholdregister.testdays;

import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** Who is due for a test, within the sites that the signed-in user may see. */
@Service
@Transactional(readOnly = true)
public class DueTestService {

    private final DueFinder dueFinder;
    private final CurrentUser currentUser;

    DueTestService(DueFinder dueFinder, CurrentUser currentUser) {
        this.dueFinder = dueFinder;
        this.currentUser = currentUser;
    }

    /** The due tests that the filter lets through, the most urgent first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<DuePerson> find(DueTestFilter filter) {
        return dueFinder.due(currentUser.scope(), filter.dueBy()).stream()
                .filter(filter::includes)
                .toList();
    }
}
