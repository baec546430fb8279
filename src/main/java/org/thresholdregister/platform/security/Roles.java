package org.thresholdregister.platform.security;

/**
 * The roles as constants for annotations: {@code @RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})} on a view,
 * {@code @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)} on a service.
 */
public final class Roles {

    public static final String NURSE = "NURSE";
    public static final String SAFETY_OFFICER = "SAFETY_OFFICER";
    public static final String PROFESSIONAL_SUPERVISOR = "PROFESSIONAL_SUPERVISOR";
    public static final String PLANT_MANAGER = "PLANT_MANAGER";
    public static final String ADMINISTRATOR = "ADMINISTRATOR";

    public static final String HAS_NURSE = "hasRole('" + NURSE + "')";
    public static final String HAS_SAFETY_OFFICER = "hasRole('" + SAFETY_OFFICER + "')";
    public static final String HAS_PROFESSIONAL_SUPERVISOR = "hasRole('" + PROFESSIONAL_SUPERVISOR + "')";
    public static final String HAS_PLANT_MANAGER = "hasRole('" + PLANT_MANAGER + "')";
    public static final String HAS_ADMINISTRATOR = "hasRole('" + ADMINISTRATOR + "')";

    private Roles() {}
}
