package club.yearline.web;

/**
 * One of the choices of a select field.
 *
 * @param value what the form sends
 * @param label as shown
 */
public record Choice(String value, String label) {}
